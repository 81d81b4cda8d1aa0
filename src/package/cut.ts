// Elements taken out of a part with what holds nothing else.
import { attribute, type Splice, withAttributes, type XmlElement } from './xml';

export const takenOut = (elements: Iterable<XmlElement>): Splice[] => [...elements].map(({ from, end }) => ({ from, to: end, text: '' }));

/** A start tag with what it counts set to another number. */
function counted(text: string, holder: XmlElement, count: number): Splice[] {
  const start = text.slice(holder.from, holder.to);
  return attribute(holder, 'count') === undefined
    ? []
    : [{ from: holder.from, to: holder.to, text: withAttributes(start, { count: String(count) }) }];
}

/** What is nothing by itself: the cells of a rule, and the other way to say what is not said. */
const isBesides = ({ local, children }: XmlElement): boolean => local === 'sqref' || (local === 'Fallback' && children.length === 0);

/** Takes elements out, with the elements around them in which nothing is left, and counts anew those that are left. */
export function without(text: string, root: XmlElement, going: ReadonlySet<XmlElement>, holders: ReadonlySet<string>): Splice[] {
  const goes = (element: XmlElement): boolean =>
    going.has(element) || (holders.has(element.local) && element.children.length > 0 && element.children.every(child => left(child)));
  const left = (element: XmlElement): boolean => isBesides(element) || goes(element);
  const from = (element: XmlElement): Splice[] => {
    if (goes(element)) return takenOut([element]);
    const stay = element.children.filter(child => !goes(child));
    return [
      ...(stay.length < element.children.length ? counted(text, element, stay.length) : []),
      ...element.children.flatMap(child => from(child)),
    ];
  };
  return from(root);
}
