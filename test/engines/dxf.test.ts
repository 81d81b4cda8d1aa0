// The drawings as another program reads them: without a fault, and number by number what was written.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { sectionDxf } from '../../src/figure/section-dxf';
import { JOINTS, LOGGER, variantOf } from '../figure/joints';
import { type DrawnEntity, entitiesOf, numberAt } from '../figure/read-dxf';

interface ReadEntity {
  readonly is: string;
  readonly layer: string;
  readonly numbers: readonly number[];
  readonly text: string;
}

interface ReadDrawing {
  readonly release: string;
  readonly faults: readonly string[];
  readonly entities: readonly ReadEntity[];
}

const folder = mkdtempSync(path.join(tmpdir(), 'drawings-'));
afterAll(() => rmSync(folder, { recursive: true }));

function readByOthers(texts: readonly string[]): readonly ReadDrawing[] {
  const files = texts.map((text, i) => path.join(folder, `${i}.dxf`));
  files.forEach((file, i) => writeFileSync(file, texts[i] ?? ''));
  return JSON.parse(
    execFileSync('/usr/bin/python3', ['test/engines/read-dxf.py', ...files], { encoding: 'utf8', maxBuffer: 1 << 28 }),
  ) as ReadDrawing[];
}

const CODES: Readonly<Record<string, readonly number[]>> = {
  LINE: [10, 20, 11, 21],
  CIRCLE: [10, 20, 40],
  ARC: [10, 20, 40, 50, 51],
  TEXT: [10, 20, 40],
};
const asRead = (entity: DrawnEntity): ReadEntity => ({
  is: entity.is,
  layer: entity.layer,
  numbers: (CODES[entity.is] ?? []).map(code => numberAt(entity, code)),
  text: entity.at.get(1) ?? '',
});

const texts = Object.values(JOINTS).map(inputs => sectionDxf(variantOf(inputs)));

it('every joint: no fault, every entity and every number', () => {
  const read = readByOthers(texts);
  expect(read.length).toBe(texts.length);
  let numbers = 0;
  read.forEach(({ release, faults, entities }, i) => {
    expect([release, ...faults]).toEqual(['AC1009']);
    const written = entitiesOf(texts[i] ?? '').map(asRead);
    expect(entities).toEqual(written);
    numbers += entities.reduce((sum, one) => sum + one.numbers.length, 0);
  });
  expect(numbers).toBeGreaterThan(20_000);
});

it('sizes typed by hand: boss 6.4, hole 3.4 and post of the demo', () => {
  const [drawing] = readByOthers([sectionDxf(variantOf({ ...LOGGER, 'board hole': 3.6 }))]);
  const diameters = (layer: string): number[] =>
    drawing?.entities.filter(one => one.layer === layer && one.is === 'CIRCLE').map(one => 2 * (one.numbers[2] ?? NaN)) ?? [];
  expect(diameters('BOSS')[0]).toBeCloseTo(6.4, 9);
  expect(diameters('HOLE')[0]).toBeCloseTo(3.4, 9);
  expect(diameters('BOARD_HOLE')[0]).toBeCloseTo(3.6, 9);
});

it('a drawing that is broken off has a fault', () => {
  expect(() => readByOthers([(texts[0] ?? '').slice(0, 900)])).toThrow();
});
