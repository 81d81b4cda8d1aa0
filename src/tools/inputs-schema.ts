// What a file of joints holds, as a JSON Schema: an array of objects with a value for each name.
import { INPUTS } from '../joint/inputs';

const VALUE = { type: ['number', 'string', 'null'] };

export const inputsSchema = (): object => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Joints of Bosswright',
  description:
    'One object a joint. A number is in the unit of its input, a text may bring its own: "0.167 in"; a name may be followed by a unit in ' +
    'brackets, "wall (in)", and null or a name left out takes the default.',
  type: 'array',
  items: {
    type: 'object',
    properties: Object.fromEntries(
      [...INPUTS].map(([name, { unit, meaning, defaultWords }]) => [
        name,
        { ...VALUE, description: `${meaning}${unit === '' ? '' : `, ${unit}`}; default: ${defaultWords}` },
      ]),
    ),
    patternProperties: {
      '^[^()]+ ?\\([^()]+\\)$': VALUE,
      '^([Vv]ariant|[Nn]ame|[Nn]ote|[Pp]art|\\(.*\\))$': { type: ['number', 'string', 'boolean', 'null'] },
    },
    additionalProperties: false,
  },
});
