/** The page: puts its parts together and shows every new state. */
import {byId, element, keep, number, signed, table} from './elements.js';
import {canUndo, change, isWaiting, lookInto, pin, replace, runIn, undo, unpin, watch, watchBusy, work} from './design.js';
import {lookAt, makeCharts, showYear, shownRange, whole} from './charts.js';
import {drawTank, flowsOf} from './tank.js';
import {faultsOf, goTo, makeForm, showForm} from './form.js';
import {makeWeather} from './weather.js';
import {makeQuestions} from './questions.js';
import {Refused, begin, farewell, starter, stop, untilClosed} from './server.js';

const FIGURES = [
  ['net energy, kWh', 'net_energy_kwh'], ['gas, kWh', 'gas_energy_kwh'], ['bought for the backup, kWh', 'backup_bought_kwh'],
  ['electricity, kWh', 'electricity_total_kwh'], ['heat from the sun, kWh', 'solar_heat_kwh'], ['heat from the backup heater, kWh', 'backup_heat_kwh'],
];
let name = 'design.yaml';
let moment = {month: null, hour: null};
let shownText = '';

async function start() {
  const told = await begin();
  byId('version').textContent = `warmvat ${told.version}. Everything runs on this machine; nothing leaves it.`;
  byId('until-closed').checked = told.until_closed;
  name = told.name;
  makeCharts(seconds => chooseHour(seconds));
  makeForm(told.schema, told.demonstration);
  makeWeather(told.samples, told.weather);
  makeQuestions(told.questions);
  watch(show);
  watchBusy(busy => {
    byId('short').setAttribute('aria-busy', busy);
    byId('status').textContent = busy ? 'Working…' : standing();
  });
  listen();
  work.text = told.text;
  await runIn(told.weather.id);
}

function listen() {
  byId('undo').addEventListener('click', undo);
  byId('save').addEventListener('click', () => keep(name, 'text/plain', work.text));
  byId('open').addEventListener('change', open);
  byId('pin').addEventListener('click', pin);
  byId('unpin').addEventListener('click', unpin);
  byId('take-text').addEventListener('click', () => {
    shownText = byId('text').value;
    replace(shownText);
  });
  byId('starter').addEventListener('click', first);
  byId('until-closed').addEventListener('change', event => untilClosed(event.target.checked));
  byId('stop').addEventListener('click', async () => {
    await stop();
    byId('status').textContent = 'The program has been stopped. Start it again with warmvat page.';
  });
  addEventListener('pagehide', farewell);
  addEventListener('keydown', event => {
    const typing = /^(INPUT|TEXTAREA|SELECT)$/.test(event.target.tagName) && event.target.type !== 'range';
    if ((event.ctrlKey || event.metaKey) && event.key === 'z' && !typing) {
      event.preventDefault();
      undo();
    }
  });
  byId('span').addEventListener('change', () => span(byId('span').value));
  const step = (move, factor) => () => {
    const [from, to] = shownRange(), length = (to - from) * factor, middle = (from + to) / 2 + move * (to - from);
    lookAt(middle - length / 2, middle + length / 2);
  };
  byId('earlier').addEventListener('click', step(-0.5, 1));
  byId('later').addEventListener('click', step(0.5, 1));
  byId('closer').addEventListener('click', step(0, 0.5));
  byId('wider').addEventListener('click', step(0, 2));
  byId('moment').addEventListener('change', () => {
    moment = {month: Number(byId('moment').value), hour: null};
    work.hour = -1;
    showTank();
  });
  byId('hour').addEventListener('change', () => byId('hour').value && chooseHour(Date.parse(`${byId('hour').value.slice(0, 13)}:00Z`) / 1000));
}

async function open(event) {
  const file = event.target.files[0];
  event.target.value = '';
  if (!file) return;
  if (file.size > 1000000) {
    fault([`${file.size} bytes, expected a design file of up to 1000000.`]);
    return;
  }
  name = file.name;
  await replace(await file.text());
}

async function first() {
  try {
    const told = await starter({litres: byId('litres').value, setpoint: byId('setpoint').value, weather: work.weather});
    name = 'design.yaml';
    await replace(told.text);
  } catch (refused) {
    if (!(refused instanceof Refused)) throw refused;
    fault(refused.told.sentences);
  }
}

function fault(sentences) {
  const box = byId('faults');
  box.hidden = sentences.length === 0;
  box.replaceChildren(...faultsOf(sentences).map(found => element('p', {}, found.sentence + ' ',
    found.path && element('button', {type: 'button', onclick: () => goTo(found.path)}, 'Go there'))));
}

const standing = () => work.sentences.length > 0 ? 'The design has a fault: what is shown belongs to the last one without.' : 'The year is up to date.';

/** Shows the state of the design; what a fault leaves as it was is shown pale. */
function show() {
  fault(work.sentences);
  const faulty = work.sentences.length > 0;
  byId('short').classList.toggle('stale', faulty);
  byId('charts').classList.toggle('stale', faulty);
  byId('undo').disabled = !canUndo();
  byId('unpin').hidden = work.pinned === null;
  // what was typed into the text and not taken over yet stays
  if (byId('text').value === shownText) byId('text').value = work.text;
  shownText = work.text.replaceAll('\r\n', '\n');
  if (work.year !== null && !faulty) {
    showYear(work.year, work.pinned?.year ?? null, work.year.tank);
    card(work.year.card);
    showSliders();
    spans();
    months();
    showTank();
    differences();
  }
  showForm();
}

function card(told) {
  byId('title').textContent = told.title;
  document.title = `${told.title} – Warmvat`;
  byId('subtitle').textContent = told.subtitle;
  byId('short').replaceChildren(...[element('p', {class: 'sentence'}, told.sentence),
    told.but.length ? element('p', {}, 'But:') : null, told.but.length ? element('ul', {}, told.but.map(but => element('li', {}, but))) : null,
    element('dl', {}, told.figures.map(([key, value]) => element('div', {}, element('dt', {}, key), element('dd', {}, value)))),
    element('p', {class: 'hint'}, `Warnings: ${told.warnings}. The question “year” shows the whole report.`)].filter(Boolean));
  byId('cautions').replaceChildren(...told.cautions.map(caution => element('li', {}, caution)));
}

/** Sliders stay where they are while they are dragged; only new ones are made. */
function showSliders() {
  const box = byId('sliders');
  const wanted = work.year.sliders;
  if ([...box.children].map(child => child.dataset.path).join() !== wanted.map(slider => slider.path).join()) {
    box.replaceChildren(...wanted.map(slider));
  }
  wanted.forEach((slider, i) => {
    const input = box.children[i].querySelector('input');
    Object.assign(input, {min: slider.least, max: slider.most});
    if (!input.matches(':active') && !isWaiting(slider.path)) input.value = slider.value;
    said(box.children[i], Number(input.value));
  });
}

function slider(told) {
  const id = `s-${told.path}`;
  const input = element('input', {id, type: 'range', min: told.least, max: told.most, step: told.step, value: told.value,
    oninput: () => { said(box, Number(input.value)); change([[told.path, Number(input.value)]], false); },
    onchange: () => change([[told.path, Number(input.value)]])});
  const box = element('div', {class: 'slider'}, element('label', {for: id}, told.name, element('output', {for: id})), input);
  box.dataset.path = told.path;
  box.dataset.unit = told.unit;
  return box;
}

function said(box, value) {
  const text = `${Number(value.toFixed(3))} ${box.dataset.unit}`;
  box.querySelector('output').value = text;
  box.querySelector('input').setAttribute('aria-valuetext', text);
}

const monthName = label => new Date(`${label}-15T00:00Z`).toLocaleString('en-GB', {month: 'long', year: 'numeric', timeZone: 'UTC'});

/** Stretches to show, and months for the flows. */
function spans() {
  const labels = work.year.months.labels, key = labels.join();
  if (byId('span').dataset.key === key) return;
  byId('span').dataset.key = key;
  byId('span').replaceChildren(element('option', {value: ''}, 'all of it'), ...labels.map(label => element('option', {value: label}, monthName(label))));
  byId('moment').replaceChildren(...labels.map((label, i) => element('option', {value: i}, monthName(label))));
  const [from, to] = whole();
  Object.assign(byId('hour'), {min: stamp(from), max: stamp(to - 3600)});
  moment = {month: 0, hour: null};
  work.hour = -1;
}

const stamp = seconds => new Date(seconds * 1000).toISOString().slice(0, 16);

function span(label) {
  if (label === '') return lookAt(...whole());
  const [year, month] = label.split('-').map(Number);
  return lookAt(Date.UTC(year, month - 1, 1) / 1000, Date.UTC(year, month, 1) / 1000);
}

function chooseHour(seconds) {
  const hour = Math.floor((seconds - whole()[0]) / 3600);
  if (hour < 0 || hour >= work.year.hours.count) return;
  moment = {month: moment.month, hour};
  byId('hour').value = stamp(whole()[0] + hour * 3600);
  lookInto(hour);
}

/** The flows of the month, or of the hour when they have come. */
function showTank() {
  const {year} = work;
  if (moment.hour === null) {
    const month = Math.min(moment.month, year.months.count - 1);
    byId('hour').value = '';
    drawTank(byId('tank'), year.tank, flowsOf(year.flows, year.months, month), `mean of ${monthName(year.months.labels[month])}`,
      `${number(year.months.columns.slurry_mean_c[month])} °C`);
  } else if (year.chosen_hour === moment.hour && year.hour.count === 1) {
    const when = `the hour from ${stamp(whole()[0] + moment.hour * 3600).replace('T', ' ')}`;
    drawTank(byId('tank'), year.tank, flowsOf(year.flows, year.hour, 0), when, `${number(year.hours.columns.slurry_c[moment.hour])} °C`);
  }
}

function months() {
  const {months: told} = work.year;
  const columns = [['slurry lowest, °C', 'slurry_least_c'], ['slurry mean, °C', 'slurry_mean_c'], ['slurry highest, °C', 'slurry_most_c'],
    ['hours below minimum', 'hours_below_floor'], ['sun, kWh', 'solar_heat_kwh'], ['backup heater, kWh', 'backup_heat_kwh'],
    ['bought, kWh', 'backup_bought_kwh'], ['electricity, kWh', 'electricity_total_kwh'], ['gas, kWh', 'gas_energy_kwh'], ['net energy, kWh', 'net_energy_kwh']];
  byId('months').replaceChildren(table('Month by month', ['month', ...columns.map(column => column[0])],
    told.labels.map((label, i) => [monthName(label), ...columns.map(column => number(told.columns[column[1]]?.[i]))])));
}

const total = (year, column) => year.months.columns[column]?.reduce((sum, value) => sum + value, 0);

/** Which figures and numbers differ from the pinned design. */
function differences() {
  const {pinned, year} = work;
  byId('pinned').hidden = pinned === null;
  if (pinned === null) return;
  const row = (label, then, now) => [label, number(then), number(now), signed(now - then)];
  const figures = FIGURES.map(([label, column]) => row(label, total(pinned.year, column), total(year, column)));
  const lowest = one => Math.min(...one.months.columns.slurry_least_c);
  figures.push(row('hours below minimum', total(pinned.year, 'hours_below_floor'), total(year, 'hours_below_floor')), row('slurry lowest, °C', lowest(pinned.year), lowest(year)));
  const keys = [...new Set([...Object.keys(pinned.year.numbers), ...Object.keys(year.numbers)])].filter(key => pinned.year.numbers[key] !== year.numbers[key]);
  byId('differences').replaceChildren(
    table('Figures of the whole run', ['', 'pinned', 'now', 'difference'], figures),
    table(keys.length ? 'Numbers of the design that differ' : 'No number of the design differs', ['key', 'pinned', 'now'],
      keys.map(key => [key, number(pinned.year.numbers[key]), number(year.numbers[key])])));
}

start().catch(failure => {
  byId('status').textContent = failure.message;
  throw failure;
});
