// The help pages as the build writes them: complete, linked, true to the core, well formed, small.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exampleCall } from '../../src/about/about';
import { call, CARDS } from '../../src/registry';
import { ownExample } from '../../src/core/screw/own';
import { INSERT_JOINT } from '../../src/demo/guide-hatch';
import { TOPICS, type Card } from '../../src/core/card';
import type { Described } from '../../src/help/described-function';
import { LIBRARY_PAGES } from '../../src/help/documents';
import { ENGLISH } from '../../src/help/language';
import { functionPage } from '../../src/help/function-page';
import { FUNCTION_MISTAKES } from '../../src/help/mistakes';
import { helpPages } from '../../src/help/pages';
import { documents } from '../../src/help/plugin';
import { SKETCHES } from '../../src/help/sketches';
import { formOfCard } from '../../src/plain/forms';
import { METADATA } from '../../src/tools/metadata';
import { fromSigns } from '../../src/sheet/signs';
import { value } from '../kit/ask';

const DOCUMENTS = documents();
const PAGES = helpPages(METADATA.functions, DOCUMENTS);
const page = (file: string): string => PAGES.get(file) ?? expect.fail(`there is no page ${file}`);
const pageOf = (id: string): string => page(`${id}.html`);
const cards = [...CARDS.values()];

/** The only scripts of a page. */
const OWN_SCRIPTS = /<script (?:defer src="(?:\.\.\/)?find\.js"|src="(?:\.\.\/){0,2}decimal\.js")><\/script>/g;

/** What else stands beside the pages. */
const OTHER_FILES = [
  'help.css',
  'decimal.js',
  'find.js',
  '../icons/icon-32.png',
  'docs/hand-over.png',
  'docs/joint-inputs.schema.json',
  LIBRARY_PAGES,
];

const resolved = (file: string, link: string): string => new URL(link, `http://help/a/${file}`).pathname.replace(/^\/a\//, '');
const known = (path: string): boolean => PAGES.has(path) || OTHER_FILES.some(other => resolved('index.html', other) === path);
const allOf = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map(([, found = '']) => found);
const section = (text: string, id: string): string =>
  new RegExp(`<section id="${id}">(.*?)</section>`, 's').exec(text)?.[1] ?? expect.fail(`no section ${id}`);

/** What does not lead anywhere. */
function lost(pages: ReadonlyMap<string, string>): string[] {
  return [...pages].flatMap(([file, text]) =>
    allOf(text, /(?:href|src)="([^"]*)"/g)
      .filter(link => !link.startsWith('https:'))
      .filter(link => {
        const [path = '', anchor] = link.split('#');
        const target = path === '' ? file : resolved(file, path);
        return !known(target) || (anchor !== undefined && !page(target).includes(`id="${anchor}"`));
      })
      .map(link => `${file}: ${link}`),
  );
}

/** The first tag that is not closed in its place. */
function unbalanced(markup: string): string | undefined {
  const open: string[] = [];
  for (const [, closing, name = '', empty] of markup.matchAll(/<(\/?)([a-zA-Z][\w-]*)(?:\s[^<>]*?)?(\/?)>/g)) {
    if (closing !== '/') {
      if (empty !== '/') open.push(name);
    } else if (open.pop() !== name) return name;
  }
  return open[0];
}

test('every function, every topic, every document and the first page are there, and nothing else', () => {
  const spoken = ['index.html', ...[...CARDS.keys()].map(id => `${id}.html`)];
  expect([...PAGES.keys()].filter(file => !file.includes('topics/')).sort()).toEqual(
    [...spoken, ...spoken.map(file => `de/${file}`), ...[...DOCUMENTS.keys()].map(name => `docs/${name}.html`)].sort(),
  );
  expect(DOCUMENTS.size).toBeGreaterThan(10);
  for (const folder of ['topics/', 'de/topics/'])
    expect([...PAGES.keys()].filter(file => file.startsWith(folder)).length).toBe(TOPICS.length);
});

test('all of it is smaller than 3.4 MB in each language', () => {
  const bytes = (isGerman: boolean): number =>
    [...PAGES].reduce((sum, [file, text]) => (file.startsWith('de/') === isGerman ? sum + new TextEncoder().encode(text).length : sum), 0);
  for (const isGerman of [false, true]) expect(bytes(isGerman)).toBeLessThan(3_400_000);
});

describe('links', () => {
  test('every link and every anchor leads somewhere', () => expect(lost(PAGES)).toEqual([]));

  test('one that does not is found out', () => {
    expect(
      lost(
        new Map([
          ['index.html', '<a href="BOSS.XX.html">'],
          ['topics/a.html', '<a href="BOSS.OD.html">'],
          ['BOSS.OD.html', '<a href="index.html#caution">'],
        ]),
      ),
    ).toHaveLength(3);
  });

  test('the bench leads here', () => {
    const [link = ''] = allOf(readFileSync(new URL('../../src/bench/bench.html', import.meta.url), 'utf8'), /<a href="help\/([^"]*)"/g);
    expect(PAGES.has(link)).toBe(true);
  });

  test('functions.json leads to the pages', () => {
    for (const { id, helpUrl } of METADATA.functions) {
      expect(helpUrl).toBe(`https://localhost:3000/help/${id}.html`);
      expect(PAGES.has(`${id}.html`), id).toBe(true);
    }
  });
});

describe('the joint on the page of a function', () => {
  test.each([
    ['BOSS.SINK', ['sink, head half']],
    ['BOSS.CIRCLE', ['sink, thread half']],
    ['PIN.RATIO', ['core pin']],
    ['HOLE.AT', ['pilot not too tight']],
    ['HOLE.MOUTH', ['thread bites at the mouth']],
    ['RECESS.DIAMETER', ['head fits the recess']],
    ['TORQUE.STRIP', ['strip before drive', 'set torque in its window']],
    ['BOARD.HOLD', ['board held by the boss']],
    ['GRIP', []],
    ['RIB.TIP', []],
  ])('%s belongs to the rules %j', (id, rules) => expect(allOf(section(pageOf(id), 'related'), /Rule “([^”]*)”/g)).toEqual(rules));

  test('and says what it works out or is part of there', () => {
    expect(section(pageOf('BOSS.SINK'), 'related')).toContain('In the joint it works out head sink ratio.');
    expect(section(pageOf('BOSS.CIRCLE'), 'related')).toContain('In the joint it is part of root circle.');
    expect(section(pageOf('RIB.TIP'), 'related')).not.toContain('In the joint it');
  });
});

describe('formulas', () => {
  const withForm = cards.filter(({ id }) => formOfCard(id) !== undefined);

  test.each(withForm.map(card => [card.id, card] as const))('%s is set with every symbol of its arguments', (id, card) => {
    const formula = section(pageOf(id), 'formula');
    const maths = allOf(formula, /(<math.*?<\/math>)/gs);
    expect(maths.length).toBeGreaterThan(0);
    for (const one of maths) expect(unbalanced(one), one).toBeUndefined();
    for (const { name, symbol } of card.params) {
      const base = /^\p{L}{1,2}/u.exec(symbol ?? '')?.[0];
      if (base !== undefined) expect(formula, name).toContain(`<mi>${base}</mi>`);
    }
  });

  test('a tag that is not closed is found out', () => {
    expect(unbalanced('<math><mi>a</mi></math>')).toBeUndefined();
    expect(unbalanced('<math><mi>a</math></mi>')).toBe('math');
    expect(unbalanced('<math><mi>a</mi>')).toBe('math');
  });

  const inner = (id: string): string => section(pageOf(id), 'formula').replace(/<\/?math[^>]*>/g, '');
  test('a fraction, a power, a root, a sum, a choice', () => {
    expect(inner('BOSS.SINK')).toContain('<mfrac><mi>t</mi><mi>T</mi></mfrac>');
    expect(inner('PIN.DEFLECTION')).toContain('<msup><mi>L</mi><mn>4</mn></msup>');
    expect(inner('POSITION.ZONE')).toMatch(/<msqrt>.*<\/msqrt>/);
    expect(inner('GRIP')).toContain('<munder><mo>∑</mo><mi>i</mi></munder>');
    expect(inner('BOSS.WALL')).toMatch(/<mo>\{<\/mo><mtable class="cases" displaystyle="true">.*otherwise/);
  });
});

describe('examples', () => {
  const withNumber = cards.filter(({ example }) => 'result' in example && typeof example.result === 'number');

  test.each(withNumber.map(card => [card.id, card] as const))('%s shows what the core gives', (id, card: Card) => {
    const outcome = call(id, card.example.args);
    if (!outcome.ok) expect.fail(outcome.message);
    const [shown = ''] = allOf(section(pageOf(id), 'example'), /<output>(.*?)<\/output>/g);
    const value = Number(shown.replace('−', '-'));
    expect(Math.abs(value - Number(outcome.value))).toBeLessThanOrEqual(1e-5 * Math.abs(Number(outcome.value)));
  });

  test('the numbers are put in', () => {
    expect(section(pageOf('BOSS.OD'), 'example')).toContain('outside diameter = 4.4918 + 2·1.2 = 6.8918 mm');
    expect(section(pageOf('SCREW.HEAD.DIAMETER'), 'example')).toMatch(/Read in ISO 7045, .*: read in \d+ secondary cop/);
  });
});

describe('what a supplier gets', () => {
  test('plain formulas of the example', () => {
    expect(section(pageOf('BOSS.OD'), 'plain')).toContain('Steps!$B$5+2*Steps!$B$6+2*Steps!$B$7*TAN(RADIANS(Steps!$B$8))');
    expect(section(pageOf('STACK.SIMULATE'), 'plain')).toContain('a simulation');
  });

  test.each(cards.map(({ id }) => id))('%s without a call of ours', id => expect(section(pageOf(id), 'plain')).not.toContain('ENCL'));
});

test('the figure shows what the function works out', () => {
  expect(pageOf('BOSS.WALL')).toMatch(/<tr class="own"><th scope="row">\w<\/th><td>boss wall root<\/td><td class="number">2\.183 mm/);
  expect(page('topics/board-and-supports.html')).toContain('<svg');
  expect(pageOf('STACK.PPM')).not.toContain('<svg');
});

test('rim and seal have drawings of their own, with the numbers of the example', () => {
  const row = (letter: string, name: string, value: string, own = ''): string =>
    `<tr${own}><th scope="row">${letter}</th><td>${name}</td><td class="number">${value}</td></tr>`;
  expect(pageOf('SEAL.SQUEEZE')).toContain(row('A', 'cord', '2 mm') + row('B', 'groove depth', '1.5 mm') + row('C', 'gap', '0.1 mm'));
  expect(pageOf('RIM.SAG')).toContain(row('C', 'opening between two screws', '0.017 mm', ' class="own"'));
  expect(pageOf('RIM.PITCH')).toContain(row('A', 'screw pitch', '52.11 mm', ' class="own"'));
  for (const id of Object.keys(SKETCHES)) {
    const svg = /<svg.*<\/svg>/s.exec(pageOf(id))?.[0] ?? '';
    const letters = allOf(svg, /<text[^>]*>([A-Z])<\/text>/g);
    expect([...letters].sort(), id).toEqual(allOf(pageOf(id), /<th scope="row">([A-Z])<\/th>/g));
    expect(unbalanced(svg), id).toBeUndefined();
    expect(pageOf(id)).toContain(`The example of ${id}`);
  }
  expect(page('topics/ribs-lip-mould.html')).toContain('The example of SEAL.SQUEEZE');
});

test('inserts are explained on a joint with an insert, which passes', () => {
  const row = (name: string, value: string): string => `<td>${name}</td><td class="number">${value}</td>`;
  for (const one of [pageOf('INSERT.LANDING'), page('topics/inserts-and-nuts.html')]) {
    expect(one).toContain('The joint of the guide hatch');
    expect(one).toContain(row('insert diameter', '4.7 mm'));
    expect(one).toContain(row('full thread, worst', '4.31 mm'));
  }
  const names = Object.keys(INSERT_JOINT);
  expect(value('JOINT.TABLE', [names, Object.values(INSERT_JOINT)], [['state', 'reason']])).toEqual([
    ['state', 'reason'],
    ['pass', '–'],
  ]);
});

test('a hook is drawn, and what a function works out is bold', () => {
  const own = (id: string): string[] => allOf(pageOf(id), /<tr class="own"><th scope="row">(\w)<\/th>/g);
  expect(['SNAP.STRAIN', 'SNAP.DEFLECTION', 'SNAP.FORCE', 'SNAP.MATING'].map(own)).toEqual([['H'], ['D'], ['F'], ['G']]);
  const drawing = page('topics/snap-hooks-estimates.html');
  // each letter of the legend stands on the drawing once
  const letters = allOf(drawing, /<th scope="row">(\w)<\/th>/g);
  expect(letters.join('')).toBe('ABCDEFGH');
  expect(allOf(drawing, /<text[^>]*>(\w)<\/text>/g).sort()).toEqual(letters);
});

test('how an own screw is typed can be typed so', () => {
  expect(section(pageOf('HOLE.PILOT'), 'arguments')).toContain(`&quot;${ownExample()}&quot;`);
  expect(pageOf('RECESS.DEPTH')).not.toContain('own screw');
  // 3.0 − 0.8·(3.0 − 2.1)
  expect(value('HOLE.PILOT', ownExample(), 0.8)).toBeCloseTo(2.28, 9);
  expect(value('SCREW.LENGTHS', ownExample())).toEqual([[8], [10], [12], [16]]);
});

test('a function says of an own screw just where it takes one', () => {
  const taking = cards.flatMap(({ id, example, params }) =>
    params.flatMap(({ kind }, i) => {
      if (kind.is !== 'screw' && kind.is !== 'screw size') return [];
      const words = METADATA.functions.find(one => one.id === id)?.parameters[i]?.description ?? '';
      const args = example.args.map((one, at) => (at === i ? ownExample() : /^ISO/.test(String(one)) ? 'pan' : one));
      return [[id, words.includes('own screw'), call(id, args).ok]];
    }),
  );
  expect(taking.filter(([, isSaid, isTaken]) => isSaid !== isTaken)).toEqual([]);
  expect(taking.filter(([, isSaid]) => isSaid === true).length).toBeGreaterThan(15);
  expect(taking.filter(([, isSaid]) => isSaid === false).map(([id]) => id)).toEqual(['HOLE.CLEARANCE', 'NUT.HEIGHT']);
});

test('related functions are those of the forms and of the joint', () => {
  const related = section(pageOf('BOSS.WALL'), 'related');
  expect(related).toContain('boss wall root');
  expect(related).toMatch(/Its formula uses<\/dt><dd><a href="HOLE\.AT\.html">/);
  expect(section(pageOf('HOLE.MOUTH'), 'related')).toMatch(/In the joint it gives to<\/dt><dd>.*BOSS\.WALL/);
  expect(section(pageOf('BOSS.SLENDER'), 'related')).toContain('Rule “slenderness”');
});

test('evidence and the lack of it', () => {
  expect(section(pageOf('BOSS.OD'), 'evidence')).toContain('draft chart for 1 inch of depth');
  expect(section(pageOf('PULLOUT'), 'evidence')).toContain('No check from outside is known');
});

test('mistakes are of functions that exist', () => expect(Object.keys(FUNCTION_MISTAKES).filter(id => !CARDS.has(id))).toEqual([]));

test('hostile texts are texts', () => {
  const hostile = '<img src=x onerror="alert(1)">&\'</script><script>alert(2)</script>';
  const listed: Described = { id: 'BOSS.OD', description: hostile, parameters: [{ name: hostile, description: hostile }] };
  const text = functionPage(
    CARDS.get('BOSS.OD') as Card,
    listed,
    [{ id: 'BOSS.OD', kind: 'identity', source: hostile, test: hostile, title: hostile }],
    ENGLISH,
  );
  expect(text.replace(OWN_SCRIPTS, '')).not.toMatch(/<img|<script/);
  expect(text.match(/&lt;img src=x/g)).toHaveLength(4);
});

test('no script stands in a page but those that the build writes beside it', () => {
  for (const [file, text] of PAGES) {
    expect(text.replace(OWN_SCRIPTS, ''), file).not.toMatch(/<script|\son\w+=/);
    expect(text.includes('find.js'), file).toBe(file === 'index.html' || file === 'de/index.html');
  }
});

describe('formulas in both signs', () => {
  const plain = (text: string): string => text.replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&');
  const pairs = [...PAGES].flatMap(([file, text]) =>
    [...text.matchAll(/<code[^>]*><span data-decimal="\.">(.*?)<\/span><span data-decimal=",">(.*?)<\/span><\/code>/g)].map(
      ([, dot = '', comma = '']) => [file, plain(dot), plain(comma)] as const,
    ),
  );

  test('are the same formula', () => {
    for (const [file, dot, comma] of pairs) {
      expect([file, fromSigns(comma, { decimal: ',' }).replace(/\s/g, '')]).toEqual([file, dot.replace(/\s/g, '')]);
      expect(comma).not.toBe(dot);
    }
    expect(pairs.length).toBeGreaterThan(600);
    expect(new Set(pairs.map(([file]) => file)).size).toBeGreaterThan(150);
  });

  test('are every example with a separator or a fraction', () => {
    for (const card of cards) {
      const shown = exampleCall(card);
      const isPaired = pairs.some(([file, dot]) => file === `${card.id}.html` && dot === shown);
      expect([card.id, isPaired], shown).toEqual([card.id, /,|\d\.\d/.test(shown.replace(/"[^"]*"/g, ''))]);
    }
  });

  test('read as they are typed', () => {
    expect(pairs).toContainEqual(['GRIP.html', '=ENCL.GRIP({2.5;1.6})', '=ENCL.GRIP({2,5;1,6})']);
    expect(pageOf('BOSS.OD')).toContain('=ENCL.BOSS.OD(hole; wall; [distance]; [draft])');
  });
});
