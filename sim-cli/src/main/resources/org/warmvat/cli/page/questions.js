/** The questions of the command line: a button each, with its options, progress, a way to stop, and the report in place. */
import {byId, element} from './elements.js';
import {work} from './design.js';
import {Refused, ask, follow, report, stopAsking} from './server.js';

const OTHER = 'another-design';
const PIECE = 8192;
let asking = 0;

/** Makes a card for each question. */
export function makeQuestions(questions) {
  byId('questions').append(element('div', {class: 'questions'}, questions.map(card)));
  byId('cancel').addEventListener('click', () => stopAsking(asking));
}

/** Files that are needed stand in the open, all else behind a line that opens. */
function card(question) {
  const id = `q-${question.name}`;
  const file = slot => element('div', {class: 'field'}, element('label', {for: `${id}${slot.name}`}, words(slot.name)),
    element('input', {id: `${id}${slot.name}`, type: 'file'}), element('p', {class: 'help'}, slot.says));
  const other = question.pinned ? [file({name: OTHER, says: 'A design file in place of the pinned design.'})] : [];
  const more = [question.more ? element('p', {class: 'help'}, question.more) : null, ...question.fields.map(field => option(id, field)),
    ...question.files.filter(slot => !slot.needed).map(file), ...other].filter(Boolean);
  return element('div', {class: 'question'}, element('h3', {}, question.name), element('p', {}, question.says),
    question.pinned ? element('p', {}, 'On this page: the design at work against the pinned one or another file.') : null,
    question.files.filter(slot => slot.needed).map(file),
    element('button', {type: 'button', class: 'main', id, 'aria-label': `Ask ${question.name}`, onclick: () => put(question, id)}, 'Ask'),
    more.length === 0 ? null : element('details', {}, element('summary', {}, `Options of ${question.name}`), more));
}

const words = name => name.replace(/^--/, '').replaceAll('-', ' ').toLowerCase();

function option(id, field) {
  const at = `${id}${field.name}`;
  const control = field.form === '' ? element('input', {id: at, type: 'checkbox'}) : element('input', {id: at, type: 'text', placeholder: field.usual || field.form});
  return element('div', {class: 'field'}, element('label', {for: at}, words(field.name)), control, element('p', {class: 'help'}, field.says));
}

async function put(question, id) {
  const options = {}, files = {};
  question.fields.forEach(field => {
    const control = byId(`${id}${field.name}`);
    if (field.form === '' ? control.checked : control.value.trim() !== '') options[field.name] = field.form === '' ? '' : control.value.trim();
  });
  for (const slot of question.files) {
    const file = byId(`${id}${slot.name}`).files[0];
    if (file) files[slot.name] = await inBase64(file);
  }
  const pinned = question.pinned && byId(id + OTHER).files[0] ? await byId(id + OTHER).files[0].text() : work.pinned?.text;
  byId('asked').hidden = false;
  byId('asked-heading').textContent = `${question.name}: the answer`;
  byId('asked-heading').focus();
  byId('answer').replaceChildren();
  byId('progress').removeAttribute('value');
  byId('reached').textContent = 'working';
  byId('working').hidden = false;
  try {
    const asked = {question: question.name, options, files, text: work.text, pinned, weather: work.weather};
    asking = (await ask(asked)).number;
    const ended = await follow(asking, reached);
    await show(ended, asking);
  } catch (refused) {
    if (!(refused instanceof Refused)) throw refused;
    fault(refused.told.sentences);
  }
  byId('working').hidden = true;
}

/** Bytes as they are: a logger's text need not be UTF-8. */
async function inBase64(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE) text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
}

function reached(state) {
  if (state.all > 0) {
    byId('progress').max = state.all;
    byId('progress').value = state.done;
    byId('reached').textContent = `${state.done} of ${state.all}`;
  }
}

const fault = sentences => byId('answer').replaceChildren(
  element('div', {class: 'fault', role: 'alert'}, sentences.map(sentence => element('p', {}, sentence))));

async function show(ended, number) {
  if (ended.sentences.length > 0) {
    fault(ended.sentences);
    return;
  }
  // the report's own style is for a page of its own, and the policy of this one would refuse it
  const text = (await report(number)).replace(/<style>[^]*?<\/style>/, '');
  const page = new DOMParser().parseFromString(text, 'text/html');
  byId('answer').replaceChildren(element('p', {},
    element('a', {href: `ask/${number}/report.html`, target: '_blank', rel: 'noopener'}, 'The report as a page of its own'), ' · ',
    element('a', {href: `ask/${number}/report.zip`, download: 'warmvat-report.zip'}, 'The whole folder of results as a zip')),
  element('div', {class: 'report'}, [...page.querySelector('main').children].map(lowered)));
}

/** Headings of the report stand below those of the page, and its marks are its own. */
function lowered(node) {
  const copy = document.importNode(node, true);
  copy.querySelectorAll('[id]').forEach(inner => inner.removeAttribute('id'));
  copy.querySelectorAll('a[href^="#"]').forEach(link => link.replaceWith(link.textContent));
  copy.removeAttribute('id');
  if (copy.tagName === 'SECTION') copy.setAttribute('aria-label', 'The report in short');
  copy.querySelectorAll('h1, h2, h3').forEach(head => head.replaceWith(element('h4', {}, head.textContent)));
  return /^H[123]$/.test(copy.tagName) ? element('h4', {}, copy.textContent) : copy;
}
