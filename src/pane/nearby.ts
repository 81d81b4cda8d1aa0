// The joint, the stack and the study of the selected cell, from what stands round it: one read at a time, the newest selection wins,
// and what was read stays until it changes.
import { holds, cellPosition, meet, type Rectangle } from '../sheet/addresses';
import { heartRound } from '../sheet/parts';
import type { CalculationState, Selection, SheetPort } from '../sheet/port';
import { Joints, type JointHere } from './find-joint';
import { Stacks } from './find-stack';
import { Studies } from './find-study';
import { type AtSelection, SETTLED_MS } from './followed';
import { type KnownSheet, knownAround, partsBySheet, type PaneValues, valuesOfParts } from './workbook';

/** A formula may lead to one that leads on. */
const MOST_LEADS = 3;

interface Found {
  readonly source: PaneValues;
  readonly joints: Joints;
  readonly stacks: Stacks;
  readonly studies: Studies;
}

export class Nearby {
  private known = new Map<string, KnownSheet>();
  private calculation: CalculationState = 'settled';
  private built: Found | undefined;
  private wanted: Selection | undefined;
  private isReading = false;
  private settling: ReturnType<typeof setTimeout> | undefined;
  private isStopped = false;
  private last: Selection | undefined;
  private shown: Selection | undefined;
  private shownStack: Selection | undefined;
  private shownStudy: Selection | undefined;
  private isOfStudy = false;
  private found: JointHere;

  constructor(
    private readonly port: SheetPort,
    private readonly tell: (here: AtSelection) => void,
    private readonly failed: (thrown: unknown) => void,
  ) {}

  select(selection: Selection): void {
    this.last = selection;
    this.wanted = selection;
    // What one action of the user brings is told together.
    queueMicrotask(() => void this.follow());
  }

  /** Without an area the whole sheet may be another. */
  changed(sheetName: string, area?: Rectangle): void {
    const sheet = this.known.get(sheetName);
    if (sheet === undefined) return;
    if (area !== undefined && !sheet.parts.some(({ covers }) => meet(covers, area))) {
      sheet.reach(area);
      return;
    }
    this.forget(sheetName);
  }

  /** Values of a sheet were worked out anew. */
  calculated(sheetName: string): void {
    // what was not at rest when it was read may have waited for another sheet
    const isWaiting = this.calculation === 'pending';
    if (!this.known.has(sheetName) && !isWaiting) return;
    // Cells answer one after the other: they are read when they have come to rest.
    clearTimeout(this.settling);
    this.settling = setTimeout(() => this.forget(isWaiting ? (this.last?.sheetName ?? sheetName) : sheetName), SETTLED_MS);
  }

  /** Nothing that stood on it stays in sight. */
  gone(sheetName: string): void {
    if (this.shown?.sheetName === sheetName) {
      this.shown = undefined;
      this.found = undefined;
    }
    if (this.shownStack?.sheetName === sheetName) this.shownStack = undefined;
    if (this.shownStudy?.sheetName === sheetName) this.shownStudy = undefined;
    this.forget(sheetName);
  }

  stop(): void {
    this.isStopped = true;
    clearTimeout(this.settling);
    this.wanted = undefined;
  }

  private forget(sheetName: string): void {
    this.known.delete(sheetName);
    this.built = undefined;
    if (this.last !== undefined) this.select(this.last);
  }

  private async follow(): Promise<void> {
    if (this.isReading) return;
    this.isReading = true;
    try {
      while (this.wanted !== undefined) {
        const here = this.wanted;
        this.wanted = undefined;
        await this.read(here);
      }
    } catch (thrown) {
      if (!this.isStopped) this.failed(thrown);
    } finally {
      this.isReading = false;
    }
  }

  private get isOvertaken(): boolean {
    return this.wanted !== undefined || this.isStopped;
  }

  private async read(here: Selection): Promise<void> {
    const { sheetName, at } = here;
    if (this.known.get(sheetName)?.knows(heartRound(at)) !== true) {
      const around = await this.port.around(here);
      this.calculation = around.calculation;
      this.known.set(sheetName, knownAround(around));
      this.built = undefined;
      if (this.isOvertaken) return;
    }
    for (let lead = 0; ; lead++) {
      const { source, ...found } = this.build();
      source.missing.length = 0;
      const answer = this.answer(here, found);
      const missing = source.missing.splice(0);
      if (missing.length === 0 || lead === MOST_LEADS) return this.tell(answer);
      // what names a row stands left of it
      const parts = await this.port.readAreas(missing.map(area => ({ ...area, left: Math.max(0, area.left - 1) })));
      if (this.isOvertaken) return;
      for (const [name, sheet] of partsBySheet(parts)) {
        const known = this.known.get(name);
        if (known === undefined) this.known.set(name, sheet);
        else for (const part of sheet.parts) known.add(part);
      }
      this.built = undefined;
      if (parts.length === 0) return this.tell(answer);
    }
  }

  private build(): Found {
    if (this.built === undefined) {
      const source = valuesOfParts(this.known);
      const grids = new Map([...this.known].map(([name, { grid }]) => [name, grid]));
      this.built = { source, joints: new Joints(grids, source), stacks: new Stacks(grids, source), studies: new Studies(grids, source) };
    }
    return this.built;
  }

  /** A cell that is about neither leaves the last one in sight. */
  private answer(here: Selection, { joints, stacks, studies }: Omit<Found, 'source'>): AtSelection {
    const own = joints.at(here);
    const isJoint = own !== undefined && joints.holds(here);
    const study = isJoint ? undefined : studies.at(here);
    const stack = isJoint || study !== undefined ? undefined : stacks.at(here);
    if (own !== undefined) this.shown = here;
    if (own !== undefined || stack !== undefined || study !== undefined) {
      this.shownStack = stack === undefined ? undefined : here;
      this.isOfStudy = study !== undefined;
    }
    if (study !== undefined || this.shownStudy?.sheetName !== here.sheetName) this.shownStudy = study === undefined ? undefined : here;
    const again = this.shown !== undefined && this.knowsCell(this.shown) ? joints.at(this.shown) : undefined;
    this.found = own ?? again ?? this.found ?? joints.first() ?? null;
    const sheet = this.known.get(here.sheetName);
    return {
      found: this.found,
      stack: stack ?? (this.shownStack === undefined || !this.knowsCell(this.shownStack) ? undefined : stacks.at(this.shownStack)),
      study: study ?? (this.shownStudy === undefined || !this.knowsCell(this.shownStudy) ? undefined : studies.at(this.shownStudy)),
      isOfStudy: this.isOfStudy,
      calculation: this.calculation,
      largeSheet: sheet === undefined || sheet.isWhole || !sheet.used ? undefined : cellsIn(sheet.used),
      known: new Map(this.known),
    };
  }

  private knowsCell({ sheetName, at }: Selection): boolean {
    const { row, column } = cellPosition(at);
    return this.known.get(sheetName)?.parts.some(({ covers }) => holds(covers, { row, column })) === true;
  }
}

const cellsIn = ({ top, left, bottom, right }: Rectangle): number => (bottom - top + 1) * (right - left + 1);
