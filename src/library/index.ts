// What a program may use: every function by its id, the joint, and the formulas directly. Nothing of a page or a spreadsheet.
export { CARDS, call } from '../registry';
export type { Card, Param, Result } from '../core/card';
export type { Outcome } from '../core/call';
export type { Cell, Refusal, Source } from '../core/kinds';

export { OUTPUTS } from '../joint/outputs';
export { JOINT_INPUT_NAMES } from '../joint/inputs';
export { jointRows, jointTable, type JointRows } from '../joint/table';
export { PARAMETER_FORMATS, parametersOf, type JointParameter } from '../joint/parameters';
export { sectionDxf } from '../figure/section-dxf';
export { variantsOf } from '../joint/table';
export { jointMap } from '../joint/study/map';
export { jointSensitivity } from '../joint/study/sensitivity';
export { jointSimulated } from '../joint/study/simulate';
export { jointSolve } from '../joint/study/solve';
export { ofEachJoint } from '../joint/study/stream';
export { jointWindow } from '../joint/study/window';

export * from '../core/board/bending';
export * from '../core/board/board';
export * from '../core/boss/boss';
export * from '../core/draft/draft';
export * from '../core/engagement/engagement';
export * from '../core/hole/hole';
export * from '../core/hole/position';
export * from '../core/insert/insert';
export * from '../core/insert/nut';
export * from '../core/mould/mould';
export * from '../core/pattern/pattern';
export * from '../core/recess/recess';
export * from '../core/seal/seal';
export * from '../core/snap/snap';
export * from '../core/strength/hoop';
export * from '../core/strength/pull-out';
export * from '../core/strength/torque';
export * from '../core/tolerance/stack';
