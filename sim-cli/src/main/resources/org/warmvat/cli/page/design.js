/** The design at work: its text, what was changed, and the year that belongs to it. The newest change always wins. */
import {Refused, year} from './server.js';

const LONG_MS = 400;
const MOST_MEASURED = 1000;

export const work = {text: '', tree: null, year: null, weather: '', hour: -1, pinned: null, sentences: []};

const page = Math.random().toString(36).slice(2);
const past = [];
const watchers = [];
const busyWatchers = [];
const last = new Map();
let number = 0;
let waiting = null;
let under = null;
let before = null;
let later = 0;

/** Is told when work begins and when all of it is done. */
export const watchBusy = watcher => busyWatchers.push(watcher);
const busy = is => busyWatchers.forEach(watcher => watcher(is));

/** Is told of every new state. */
export const watch = watcher => watchers.push(watcher);
const tell = () => watchers.forEach(watcher => watcher(work));

/** Whether a value is on its way that the year at hand does not know yet. */
export const isWaiting = path => [waiting, under].some(sent => sent?.values.has(path));

export const canUndo = () => past.length > 0;

/** Changes values by their paths; undefined takes one out. Until the gesture ends its changes count as one for undoing. */
export function change(values, ends = true) {
  if (before === null) before = work.text;
  if (ends && values.every(([path, value]) => last.get(path) === value)) {
    // a slider that is let go says again what it said last
    remember();
    return tell();
  }
  values.forEach(([path, value]) => last.set(path, value));
  waiting = {text: null, values: new Map([...(waiting?.values ?? []), ...values]), since: performance.now()};
  if (ends) remember();
  return pump();
}

function remember() {
  if (waiting === null && under === null) last.clear();
  if (before !== null && past.at(-1) !== before) past.push(before);
  if (past.length > 200) past.shift();
  before = null;
}

/** Takes another text over. */
export function replace(text) {
  before = work.text;
  remember();
  return put(text);
}

export function undo() {
  if (past.length > 0) return put(past.pop());
  return null;
}

/** Runs the design at work in other weather. */
export function runIn(weather) {
  work.weather = weather;
  return put(work.text);
}

/** Runs it once more for the flows of an hour; changes that are on their way go along. */
export function lookInto(hour) {
  work.hour = hour;
  waiting ??= {text: null, values: new Map(), since: performance.now()};
  return pump();
}

function put(text) {
  last.clear();
  waiting = {text, values: new Map(), since: performance.now()};
  return pump();
}

export function pin() {
  work.pinned = {text: work.text, year: work.year};
  tell();
}

export function unpin() {
  work.pinned = null;
  tell();
}

/** Sends what waits, when nothing is under way or what is has taken long: the program then drops the older. */
async function pump() {
  if (waiting === null) {
    if (under === null) busy(false);
    return;
  }
  busy(true);
  if (under !== null && performance.now() - under.since < LONG_MS) {
    clearTimeout(later);
    later = setTimeout(pump, LONG_MS);
    return;
  }
  const sent = {...waiting, number: ++number, began: waiting.since, since: performance.now()};
  if (under !== null && sent.text === null) {
    sent.text = under.text;
    sent.values = new Map([...under.values, ...sent.values]);
  }
  sent.text ??= work.text;
  waiting = null;
  under = sent;
  const set = [...sent.values].map(([path, value]) => ({path, value}));
  let told = () => {};
  try {
    const answer = await year({page, number: sent.number, text: sent.text, set, weather: work.weather, hour: work.hour});
    told = () => take(sent, answer);
  } catch (failure) {
    told = () => refuse(sent, failure);
  }
  if (under === sent) under = null;
  told();
  pump();
}

function take(sent, answer) {
  if (sent.number !== number || answer === null) return;
  Object.assign(work, {year: answer, text: answer.text, tree: answer.tree, sentences: []});
  tell();
  if (performance.getEntriesByName('redrawn').length > MOST_MEASURED) performance.clearMeasures('redrawn');
  // a task after the next frame begins when all that the watchers changed is drawn
  requestAnimationFrame(() => setTimeout(() => performance.measure('redrawn', {start: sent.began, end: performance.now()})));
}

function refuse(sent, failure) {
  if (!(failure instanceof Refused)) throw failure;
  if (sent.number !== number) return;
  work.sentences = failure.told.sentences;
  if (failure.told.text !== undefined) {
    work.text = failure.told.text;
    work.tree = failure.told.tree ?? work.tree;
  }
  tell();
}
