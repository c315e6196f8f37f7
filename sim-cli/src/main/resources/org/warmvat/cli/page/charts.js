/** The year in three pictures over one time axis: temperature, heat by source, gas and net energy. */
import {byId, drawn, element, number} from './elements.js';

const DAY = 86400;
const HEIGHT = 240;
const LINES = {
  slurry: {label: 'slurry', stroke: '#1b4965', width: 2.2},
  low: {label: 'lowest', stroke: '#8fa9bb', width: 0.6},
  high: {label: 'highest', stroke: '#8fa9bb', width: 0.6},
  setpoint: {label: 'set-point', stroke: '#22262b', width: 1.4, dash: [9, 5]},
  minimum: {label: 'minimum', stroke: '#8e2a1e', width: 2, dash: [2, 4]},
  pinned: {label: 'pinned', stroke: '#6a4a8a', width: 1.6, dash: [12, 3, 2, 3]},
  sun: {label: 'sun', stroke: '#8a5200', width: 2.6},
  backup: {label: 'backup heater', stroke: '#8e2a1e', width: 1.8, dash: [7, 3]},
  need: {label: 'need: losses and feed', stroke: '#22262b', width: 1.6},
  gas: {label: 'gas made', stroke: '#3f6f3e', width: 2.2},
  bought: {label: 'bought for the backup', stroke: '#8e2a1e', width: 1.8, dash: [7, 3]},
  electricity: {label: 'electricity', stroke: '#3f6e8c', width: 1.6, dash: [4, 2]},
  net: {label: 'net energy', stroke: '#22262b', width: 2.4},
};
const PICTURES = [
  {name: 'temperature', title: 'Tank temperature, °C', unit: '°C', lines: ['slurry', 'low', 'high', 'setpoint', 'minimum', 'pinned'], pinned: 'slurry, pinned'},
  {name: 'heat', title: 'Heat by source, mean W', unit: 'W', lines: ['sun', 'backup', 'need', 'pinned'], pinned: 'backup heater, pinned'},
  {name: 'energy', title: 'Gas and net energy, kWh a day', unit: 'kWh a day', lines: ['gas', 'bought', 'electricity', 'net', 'pinned'], pinned: 'net energy, pinned'},
];

const charts = [];
let shown = null;
let range = null;
let chosen = () => {};

/** Makes the pictures; tells which hour is clicked. */
export function makeCharts(onHour) {
  chosen = onHour;
  PICTURES.forEach(picture => charts.push(made(picture)));
  new ResizeObserver(() => charts.forEach(chart => chart.plot.setSize({width: widthOf(chart.box), height: HEIGHT}))).observe(byId('charts'));
}

const widthOf = box => Math.max(240, box.clientWidth);

function made(picture) {
  const outputs = picture.lines.map(() => element('output'));
  const legend = element('ul', {class: 'legend'}, picture.lines.map((name, i) =>
    element('li', {hidden: name === 'pinned'}, swatch(LINES[name]), ' ', name === 'pinned' ? picture.pinned : LINES[name].label, ' ', outputs[i])));
  const box = element('div');
  const figure = element('div', {class: 'chart', id: `chart-${picture.name}`}, element('h3', {}, picture.title), legend, box);
  byId('charts').append(figure);
  const chart = {picture, outputs, legend, box, level: '', plot: null};
  chart.plot = new uPlot(options(chart), picture.lines.reduce(data => [...data, [null]], [[0]]), box);
  box.querySelector('canvas').setAttribute('aria-hidden', 'true');
  return chart;
}

function swatch(line) {
  return drawn('svg', {viewBox: '0 0 32 12', 'aria-hidden': 'true'},
    drawn('line', {x1: 0, y1: 6, x2: 32, y2: 6, stroke: line.stroke, 'stroke-width': Math.max(1, line.width), 'stroke-dasharray': line.dash?.join(' ')}));
}

function options(chart) {
  const {picture, box} = chart;
  const axis = {font: '12px DejaVu Sans, Arial, sans-serif', stroke: '#22262b', grid: {stroke: '#e3e0d9', width: 1}, ticks: {stroke: '#c9c5bc', width: 1}};
  const low = 1 + picture.lines.indexOf('low');
  return {
    width: widthOf(box), height: HEIGHT, legend: {show: false}, tzDate: seconds => uPlot.tzDate(new Date(seconds * 1000), 'Etc/UTC'),
    cursor: {sync: {key: 'year'}, drag: {x: true, y: false}, points: {show: false}},
    axes: [{...axis, values: timeWords}, {...axis, size: 48}],
    series: [{}, ...picture.lines.map(name => ({...LINES[name], points: {show: false}, spanGaps: false}))],
    bands: low > 0 ? [{series: [low + 1, low], fill: 'rgba(27,73,101,0.18)'}] : [],
    hooks: {
      setScale: [(plot, key) => key === 'x' && shown !== null && moved(plot.scales.x.min, plot.scales.x.max)],
      setCursor: [plot => told(chart, plot.cursor.idx)],
      ready: [plot => plot.over.addEventListener('click', () => plot.cursor.idx !== null && chosen(plot.posToVal(plot.cursor.left, 'x')))],
    },
  };
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const two = value => String(value).padStart(2, '0');

function timeWords(plot, splits, index, space, step) {
  return splits.map(split => {
    const date = new Date(split * 1000);
    if (step < DAY) return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]} ${two(date.getUTCHours())}:00`;
    return step < 27 * DAY ? `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]}` : MONTHS[date.getUTCMonth()];
  });
}

function told(chart, index) {
  chart.outputs.forEach((output, i) => {
    const value = index === null || index === undefined ? null : chart.plot.data[i + 1][index];
    output.value = value === null || value === undefined ? '' : `${number(value)} ${chart.picture.unit}`;
  });
}

/** Shows a year, beside a pinned one. */
export function showYear(year, pinned, tank) {
  const first = shown === null || shown.year.start !== year.start || shown.year.hours.count !== year.hours.count;
  shown = {year, pinned, tank, levels: new Map()};
  if (first) range = whole();
  charts.forEach(chart => {
    chart.legend.lastElementChild.hidden = pinned === null;
    draw(chart);
  });
}

const beginning = year => Date.parse(`${year.start}Z`) / 1000;

/** All of the time there is, s. */
export function whole() {
  const start = beginning(shown.year);
  return [start, start + shown.year.hours.count * 3600];
}

export const shownRange = () => range;

/** Looks at a stretch of time. */
export function lookAt(from, to) {
  const [first, last] = whole();
  const length = Math.min(last - first, Math.max(6 * 3600, to - from));
  const start = Math.min(last - length, Math.max(first, from));
  moved(start, start + length);
}

function moved(from, to) {
  if (range[0] === from && range[1] === to) return;
  range = [from, to];
  charts.forEach(draw);
}

/** Hours when close, days for a season, weeks for more: the eye would see no more. */
function draw(chart) {
  const days = (range[1] - range[0]) / DAY;
  const temperature = chart.picture.name === 'temperature';
  const level = days > 120 && !temperature ? 168 : days > 14 || chart.picture.name === 'energy' ? 24 : 1;
  const key = `${chart.picture.name} ${level}`;
  if (!shown.levels.has(key)) shown.levels.set(key, data(chart.picture.name, level));
  chart.plot.batch(() => {
    chart.plot.setData(shown.levels.get(key), false);
    chart.plot.setScale('x', {min: range[0], max: range[1]});
  });
}

function data(name, level) {
  const {year, pinned, tank} = shown;
  return name === 'temperature' ? temperature(year, pinned, tank, level)
    : name === 'heat' ? heat(year, pinned, level) : energy(year, pinned, level / 24);
}

function times(year, count, hours) {
  return Array.from({length: count}, (_, i) => beginning(year) + (i + 0.5) * hours * 3600);
}

/** Means, least or most of each bin. */
function bins(values, size, way) {
  if (values === undefined) return null;
  const count = Math.ceil(values.length / size), result = new Array(count);
  for (let bin = 0; bin < count; bin++) {
    const to = Math.min(values.length, (bin + 1) * size);
    let found = way === 'mean' ? 0 : values[bin * size];
    for (let i = bin * size; i < to; i++) {
      if (way === 'mean') found += values[i];
      else if (way === 'least' ? values[i] < found : values[i] > found) found = values[i];
    }
    result[bin] = way === 'mean' ? found / (to - bin * size) : found;
  }
  return result;
}

const none = count => new Array(count).fill(null);

function temperature(year, pinned, tank, size) {
  const column = year.hours.columns, slurry = bins(column.slurry_c, size, 'mean'), count = slurry.length;
  return [times(year, count, size), slurry, bins(column.slurry_c, size, 'least'), bins(column.slurry_c, size, 'most'),
    bins(column.setpoint_c, size, 'mean') ?? new Array(count).fill(tank.setpoint_c), new Array(count).fill(tank.minimum_c),
    fitting(bins(pinned?.hours.columns.slurry_c, size, 'mean'), count)];
}

/** A pinned year of other weather has no place on this axis. */
const fitting = (values, count) => values !== null && values.length === count ? values : none(count);

function heat(year, pinned, size) {
  const column = year.hours.columns;
  const need = column.loss_w.map((loss, i) => loss + column.feed_w[i]);
  const count = Math.ceil(year.hours.count / size);
  return [times(year, count, size), bins(column.solar_heat_w, size, 'mean') ?? none(count), bins(column.backup_heat_w, size, 'mean') ?? none(count),
    bins(need, size, 'mean'), fitting(bins(pinned?.hours.columns.backup_heat_w, size, 'mean'), count)];
}

function energy(year, pinned, size) {
  const days = Math.max(1, size), column = year.days.columns;
  const count = Math.ceil(year.days.count / days);
  const of = name => bins(column[name], days, 'mean') ?? none(count);
  return [times(year, count, 24 * days), of('gas_energy_kwh'), of('backup_bought_kwh'), of('electricity_total_kwh'), of('net_energy_kwh'),
    fitting(bins(pinned?.days.columns.net_energy_kwh, days, 'mean'), count)];
}
