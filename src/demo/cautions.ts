// What no sheet of ours is without.

export const AID =
  'A sizing aid for trained people. It replaces neither a qualified engineer nor the review of the moulder; build and test every joint.';
export const ESTIMATES =
  'Strength, torque and mass are estimates from values of the resin family; your grade, ageing, weld lines and climate are not in them.';
export const MAINS =
  'Mains or other hazardous voltage: no electrical distance is supplied here. Take it from the standard that ' +
  'applies and have it reviewed by licensed people; follow local codes.';
export const BATTERIES =
  'Batteries: swelling, heat and venting are not modelled. Check the deepest reach of the screw tip against the ' +
  'cells. Button cells: rules on child access may apply.';
export const LOADS = 'Loads, lifting, pressure, vehicles, life safety: not covered. Plastics creep and crack under screws over time.';
export const INSERTS =
  'Inserts: installation, the number of openings and the torque that turns an insert are not computed; its pull-out ' +
  'force is an estimate. A test with the moulded part decides.';
export const VALUES =
  'Values of standards come from secondary copies or from memory, as said beside each; the standard itself and your own drawing govern.';
export const BLANK = 'A blank input means not checked. Results hold for the inputs, units and versions shown.';
