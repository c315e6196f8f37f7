/** Requests to the program. All addresses lie below that of the page, which carries the secret. */

/** What the program says instead of an answer, in its own sentences. */
export class Refused extends Error {
  constructor(code, told) {
    super(told.sentences.join(' '));
    this.code = code;
    this.told = told;
  }
}

async function answered(request) {
  let response;
  try {
    response = await request;
  } catch (unreachable) {
    throw new Refused(0, {sentences: ['The program does not answer: it was stopped. Start it again with warmvat page.']});
  }
  if (response.ok) return response;
  const text = await response.text();
  throw new Refused(response.status, text ? JSON.parse(text) : {sentences: [`The program refused (${response.status}).`]});
}

const post = (path, body) => answered(fetch(path, {method: 'POST', body}));
const json = async response => (await response).json();

export const begin = () => json(answered(fetch('start')));
export const sample = id => json(post('sample', JSON.stringify({weather: id})));
export const takeWeather = (bytes, fillHours, layoutBytes) => json(post(`weather?fill=${fillHours}&layout=${layoutBytes}`, bytes));
export const ask = asked => json(post('ask', JSON.stringify(asked)));
export const stopAsking = number => post(`ask/${number}/stop`, '');
export const starter = asked => json(post('new', JSON.stringify(asked)));
export const untilClosed = on => post('until-closed', String(on));
export const stop = () => post('stop', '');
export const farewell = () => navigator.sendBeacon('closed');
export const report = async number => (await answered(fetch(`ask/${number}/report.html`))).text();

/** How far a question is, until it has ended. */
export function follow(number, reached) {
  return new Promise(resolve => {
    const events = new EventSource(`ask/${number}/events`);
    events.onmessage = event => {
      const state = JSON.parse(event.data);
      reached(state);
      if (state.ended) {
        events.close();
        resolve(state);
      }
    };
    events.onerror = () => {
      events.close();
      resolve({ended: true, sentences: ['The program does not answer: it was stopped.']});
    };
  });
}

/** The year of a design: what stands in the answer's text, and its columns of numbers by name; null when a newer one overtook it. */
export async function year(asked) {
  const response = await post('year', JSON.stringify(asked));
  if (response.status === 204) return null;
  const bytes = await response.arrayBuffer();
  const length = new DataView(bytes).getUint32(0, true);
  const told = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 4, length)));
  let at = 4 + length;
  for (const part of [told.hours, told.days, told.months, told.hour]) {
    const columns = {};
    for (const name of part.columns) {
      columns[name] = new Float32Array(bytes, at, part.count);
      at += 4 * part.count;
    }
    part.columns = columns;
  }
  return told;
}
