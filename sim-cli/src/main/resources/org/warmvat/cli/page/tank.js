/** The tank to scale, with its flows in W. */
import {drawn, element, number, signed} from './elements.js';

const SIZE = {width: 520, height: 390};
/** Room for the tank and for the collector, and least height of the tank, in units of the drawing. */
const ROOM = {width: 190, height: 215, collector: 90, least: 190};

/** Flows that have a place in the drawing, by their columns, with what stands beside the arrow; all others stand in the list alone. */
const PLACES = {
  solar_heat_kwh: ['sun', 'sun'], backup_heat_kwh: ['backup', 'backup heater'], envelope_loss_wall_kwh: ['wall', 'wall'],
  envelope_loss_dry_wall_kwh: ['dry', 'dry wall'], envelope_loss_lid_kwh: ['lid', 'lid'], envelope_loss_floor_kwh: ['base', 'base'],
  fittings_loss_kwh: ['fittings', 'fittings'], feed_heat_kwh: ['feed', 'feed'], gas_loss_kwh: ['gas', 'gas'],
};

/** In the list they are told apart in full. */
const NAMES = {
  shaft_heat_kwh: "mixer's shaft", reaction_heat_kwh: 'reaction', solar_heat_kwh: 'sun, through its coil', backup_heat_kwh: 'backup heater',
  feed_heat_kwh: 'warming the feed', envelope_loss_dry_wall_kwh: 'dry wall, round the gas', gas_loss_kwh: 'vapour in the gas',
};

/** Mean flows of a month or an hour, W, part by part as the heat balance has them; out of the slurry with a minus. */
export function flowsOf(flows, period, index) {
  return flows.map(({column, name, sign}) => ({name: NAMES[column] ?? name, place: PLACES[column]?.[0], mark: PLACES[column]?.[1], inward: sign > 0,
    watts: sign * period.columns[column][index] * 1000 / period.lengths_h[index]}));
}

const run = tank => Math.sqrt(tank.collector_m2) * Math.cos(tank.tilt_deg * Math.PI / 180);
const rise = tank => Math.sqrt(tank.collector_m2) * Math.sin(tank.tilt_deg * Math.PI / 180);

/** One scale for tank and collector; beside a very large collector the tank does not become too small to read. */
function scaleOf(tank, width, height) {
  const ofTank = Math.min(ROOM.width / width, ROOM.height / height);
  const both = Math.min(ofTank, ROOM.collector / Math.max(0.01, run(tank)), ROOM.height / Math.max(0.01, rise(tank)));
  return Math.max(both, Math.min(ofTank, ROOM.least / height));
}

/** Draws it: what stands where is usual, sizes and thicknesses are those of the design. */
export function drawTank(into, tank, flows, when, slurry) {
  const outerWidth = tank.width_m + 2 * tank.wall_m;
  const outerHeight = tank.depth_m + tank.headspace_m + tank.lid_m + tank.base_m;
  const scale = scaleOf(tank, outerWidth, outerHeight);
  const x = 225, y = 75;
  const px = metres => metres * scale;
  const inner = {x: x + px(tank.wall_m), y: y + px(tank.lid_m), width: px(tank.width_m), height: px(tank.depth_m + tank.headspace_m)};
  const surface = inner.y + px(tank.headspace_m), bottom = inner.y + inner.height, base = y + px(outerHeight);
  const right = x + px(outerWidth), middle = x + px(outerWidth) / 2;
  const places = {
    lid: [middle - 30, y, 0, -1], gas: [middle + 45, y, 0, -1], dry: [right, inner.y + px(tank.headspace_m) / 2, 1, 0],
    wall: [right, surface + 40, 1, 0], fittings: [right, bottom - 18, 1, 0], base: [middle, base, 0, 1],
    sun: [x, bottom - 22, 1, 0], backup: [x, bottom - 62, 1, 0], feed: [x, surface + 4, -1, 0],
  };
  const most = Math.max(50, ...flows.map(flow => Math.abs(flow.watts)));
  const svg = drawn('svg', {viewBox: `0 0 ${SIZE.width} ${SIZE.height}`, role: 'img', 'aria-label':
    `The tank to scale, ${number(tank.width_m)} m wide inside, ${number(tank.depth_m)} m deep; its flows of ${when} stand in the list beside.`},
    drawn('rect', {x, y, width: px(outerWidth), height: px(outerHeight), fill: '#ece6d8', stroke: '#22262b', 'stroke-width': 1.5}),
    drawn('rect', {...inner, fill: '#fff', stroke: '#22262b'}),
    drawn('rect', {x: inner.x, y: surface, width: inner.width, height: px(tank.depth_m), fill: '#cfb48a', stroke: '#22262b'}),
    coil(inner, bottom - 22), tank.backup ? coil(inner, bottom - 62) : null, collector(tank, px, base),
    drawn('line', {x1: middle, y1: y - 12, x2: middle, y2: bottom - 12, stroke: '#22262b', 'stroke-width': 2}),
    drawn('text', {x: middle + px(tank.width_m) / 4, y: surface + px(tank.depth_m) / 2, 'text-anchor': 'middle'}, slurry),
    drawn('line', {x1: x, y1: base + 60, x2: x + px(0.5), y2: base + 60, stroke: '#22262b', 'stroke-width': 2}),
    drawn('text', {x: x + px(0.5) + 6, y: base + 65}, '0.5 m'),
    flows.filter(flow => flow.place).map(flow => arrow(flow, places[flow.place], most)));
  into.replaceChildren(element('div', {class: 'flows'}, svg, list(flows, when)));
}

function coil(inner, y) {
  const width = inner.width * 0.36, turns = 5, step = width / turns;
  let path = `M ${inner.x} ${y}`;
  for (let i = 0; i < turns; i++) path += ` q ${step / 4} -12 ${step / 2} 0 q ${step / 4} 12 ${step / 2} 0`;
  return drawn('path', {d: path, fill: 'none', stroke: '#22262b', 'stroke-width': 2});
}

/** The collector seen from the side, to scale as if it were square; one that finds no room is drawn smaller, and that is said. */
function collector(tank, px, base) {
  if (tank.collector_m2 <= 0) return null;
  const shrunk = Math.min(1, ROOM.collector / px(Math.max(0.01, run(tank))), ROOM.height / px(Math.max(0.01, rise(tank))));
  const x1 = 8, y1 = base;
  return drawn('g', {}, drawn('line', {x1, y1, x2: x1 + px(run(tank)) * shrunk, y2: y1 - px(rise(tank)) * shrunk, stroke: '#22262b', 'stroke-width': 5}),
    drawn('text', {x: x1, y: base + 18}, `${number(tank.collector_m2)} m²`),
    shrunk < 0.999 ? drawn('text', {x: x1, y: base + 33, class: 'mark'}, 'not to scale') : null);
}

/** An arrow into the tank or out of it, the broader the stronger, with its W. */
function arrow({watts, mark, inward: usually}, [x, y, outX, outY], most) {
  const length = 34, width = Math.max(1.5, 9 * Math.abs(watts) / most);
  const inward = watts === 0 ? usually : watts > 0;
  const direction = inward ? [Math.abs(outX), outY] : [outX, outY];
  const from = inward ? [x - direction[0] * length, y] : [x, y];
  const to = [from[0] + direction[0] * length, from[1] + direction[1] * length];
  const head = 4 + width / 2, [dx, dy] = direction;
  const tip = `${to[0]},${to[1]} ${to[0] - dx * head - dy * head},${to[1] - dy * head - dx * head} ${to[0] - dx * head + dy * head},${to[1] - dy * head + dx * head}`;
  const colour = inward ? '#8e2a1e' : '#1b4965';
  const label = outY !== 0
    ? {x: to[0] + 9, y: outY > 0 ? to[1] - 8 : to[1] + 3, 'text-anchor': 'start'}
    : {x: x + (outX < 0 || x < SIZE.width / 2 ? -1 : 1) * (length + 6), y: y - 3, 'text-anchor': outX < 0 || x < SIZE.width / 2 ? 'end' : 'start'};
  return drawn('g', {}, drawn('line', {x1: from[0], y1: from[1], x2: to[0] - dx * head, y2: to[1] - dy * head, stroke: colour, 'stroke-width': width}),
    drawn('polygon', {points: tip, fill: colour}),
    drawn('text', label, drawn('tspan', {x: label.x, class: 'mark'}, mark), drawn('tspan', {x: label.x, dy: 15}, `${number(Math.abs(watts))} W`)));
}

/** What comes in less what goes out warms the slurry and what is around it, or cools it. */
function list(flows, when) {
  const left = flows.reduce((sum, flow) => sum + flow.watts, 0);
  const row = (name, watts) => element('tr', {}, element('th', {scope: 'row'}, name), element('td', {}, signed(watts)));
  return element('div', {}, element('table', {},
    element('caption', {}, `Heat into the slurry (+) and out of it (−), ${when}`),
    element('thead', {}, element('tr', {}, element('th', {scope: 'col'}, 'flow'), element('th', {scope: 'col'}, 'W'))),
    element('tbody', {}, flows.map(flow => row(flow.name, flow.watts))),
    element('tfoot', {}, row('left over: slurry and walls warm (+) or cool (−)', left))));
}
