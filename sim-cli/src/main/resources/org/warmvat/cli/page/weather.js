/** The weather: samples, an own file, twelve means typed in; what was read, assumed and doubted. */
import {byId, element, number, table} from './elements.js';
import {runIn} from './design.js';
import {Refused, sample, takeWeather} from './server.js';

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
const MEANS = [
  {id: 'air', key: 'air_c', label: 'air, °C', values: [-1, 0, 4, 8, 13, 16, 18, 17, 13, 9, 4, 0]},
  {id: 'range', key: 'daily_range_k', label: 'day to night, K', values: [5, 6, 8, 9, 10, 10, 10, 10, 9, 7, 5, 5]},
  {id: 'sun', key: 'global_kwh_m2_day', label: 'sun, kWh/m² a day', values: [0.7, 1.3, 2.5, 4, 5, 5.4, 5.2, 4.3, 3, 1.6, 0.8, 0.5]},
  {id: 'humidity', key: 'relative_humidity', label: 'relative humidity', values: [0.87, 0.84, 0.78, 0.72, 0.7, 0.71, 0.71, 0.73, 0.79, 0.84, 0.88, 0.88]},
  {id: 'wind', key: 'wind_m_s', label: 'wind, m/s', values: [4.2, 4, 4, 3.6, 3.4, 3.2, 3.2, 3, 3.2, 3.6, 3.8, 4.1]},
];

/** Makes the panel and shows what the page began with. */
export function makeWeather(samples, told) {
  const faults = element('div', {class: 'fault', role: 'alert', hidden: true, id: 'weather-faults'});
  const select = element('select', {id: 'sample', onchange: () => { given = null; if (select.value) take(() => sample(select.value)); }},
    element('option', {value: ''}, 'choose'), samples.map(name => element('option', {value: name}, `${name.replaceAll('-', ' ')} (invented)`)));
  const file = element('input', {id: 'weather-file', type: 'file', onchange: () => own([...file.files])});
  const layout = element('input', {id: 'weather-layout', type: 'file', accept: '.yaml,.yml,.json', onchange: () => again()});
  const drop = element('div', {class: 'drop', id: 'weather-drop',
    ondragover: event => { event.preventDefault(); drop.classList.add('over'); },
    ondragleave: () => drop.classList.remove('over'),
    ondrop: event => { event.preventDefault(); drop.classList.remove('over'); own([...event.dataTransfer.files]); }},
    element('p', {}, element('label', {for: 'weather-file'}, 'Own weather file, chosen or dropped here: '), file),
    element('p', {}, element('label', {for: 'weather-layout'}, 'Its layout file, where the program does not know how it is laid out: '), layout),
    element('p', {class: 'help'}, 'A layout says in which column what stands; both files may be dropped together. The command “weather layout” proposes one.'),
    element('p', {}, element('label', {for: 'fill'}, 'Fill holes of up to '), element('input', {id: 'fill', type: 'number', min: 0, max: 672, value: 0, onchange: () => again()}),
      ' hours from the days beside'));
  byId('weather').append(element('p', {id: 'weather-told'}),
    element('label', {for: 'sample'}, 'Sample: '), select, drop, means(), faults, element('div', {id: 'weather-read'}));
  show(told);
}

let given = null;
let layout = null;

/** Takes files that were chosen or dropped: of several, the layout is the one that a design could be, too. */
function own(files) {
  const isLayout = file => /\.(ya?ml|json)$/i.test(file.name);
  layout = files.length > 1 ? files.find(isLayout) ?? null : null;
  given = files.find(file => file !== layout) ?? null;
  return again();
}

/** Reads the file at hand, anew when its layout or the holes to fill were changed. */
function again() {
  const by = layout ?? byId('weather-layout').files[0] ?? null;
  if (given === null) return null;
  return take(() => takeWeather(new Blob(by ? [by, given] : [given]), Number(byId('fill').value), by ? by.size : 0));
}

async function take(reading) {
  const faults = byId('weather-faults');
  faults.hidden = true;
  try {
    const told = await reading();
    show(told);
    await runIn(told.id);
  } catch (refused) {
    if (!(refused instanceof Refused)) throw refused;
    faults.replaceChildren(...refused.told.sentences.map(sentence => element('p', {}, sentence)));
    faults.hidden = false;
  }
}

function show(told) {
  byId('weather-told').textContent = `${told.place}: ${told.hours} hours from ${told.start.slice(0, 10)}.`;
  byId('weather-read').replaceChildren(
    told.doubts.length ? element('div', {}, element('h3', {}, 'Doubts'), element('ul', {}, told.doubts.map(doubt => element('li', {}, doubt)))) : '',
    element('details', {}, element('summary', {}, 'What was read'),
      element('ul', {}, told.assumed.map(sentence => element('li', {}, sentence))),
      table('Month by month', ['month', 'air, mean °C', 'sun, kWh/m² a day'],
        told.months.slice(0, 24).map(month => [month.month, number(month.air_c), number(month.sun_kwh_m2_day)]))));
}

/** Twelve means of each quantity, from which the program makes a year of hours. */
function means() {
  const cell = (id, label, value, more = {}) => element('input', {id, type: 'number', step: 'any', value, 'aria-label': label, ...more});
  const rows = MONTHS.map((month, i) => element('tr', {}, element('th', {scope: 'row'}, month),
    MEANS.map(mean => element('td', {}, cell(`${mean.id}-${i}`, `${month}: ${mean.label}`, mean.values[i])))));
  const place = [['latitude', 'Latitude, °', 50], ['longitude', 'Longitude, °', 10], ['elevation', 'Elevation, m', 200], ['offset', 'Clock, hours from UTC', 1]];
  return element('details', {class: 'means'}, element('summary', {}, 'Twelve monthly means, typed in'),
    element('p', {class: 'help'}, 'The numbers below are invented: put those of the place in. The year of hours made of them is synthetic.'),
    element('div', {class: 'bar'}, place.map(([id, label, value]) => element('span', {class: 'pair'}, element('label', {for: `place-${id}`}, label), ' ', cell(`place-${id}`, label, value)))),
    element('div', {class: 'wide', tabindex: 0, role: 'region', 'aria-label': 'Means of the months'}, element('table', {},
      element('caption', {}, 'Means of the months'),
      element('thead', {}, element('tr', {}, ['month', ...MEANS.map(mean => mean.label)].map(head => element('th', {scope: 'col'}, head)))),
      element('tbody', {}, rows))),
    element('button', {type: 'button', id: 'make-weather', onclick: make}, 'Make a year of them'));
}

function make() {
  const value = id => byId(id).value.trim();
  const lines = ['# warmvat normals 1', '# site: means typed in', `# latitude_deg: ${value('place-latitude')}`, `# longitude_deg: ${value('place-longitude')}`,
    `# elevation_m: ${value('place-elevation')}`, `# utc_offset_h: ${value('place-offset')}`, '# seed: 1', ['month', ...MEANS.map(mean => mean.key)].join(),
    ...MONTHS.map((month, i) => [i + 1, ...MEANS.map(mean => value(`${mean.id}-${i}`))].join()), ''];
  given = null;
  return take(() => takeWeather(lines.join('\n'), 0, 0));
}
