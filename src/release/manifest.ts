// What a release says of itself in manifest.xml.

export interface Manifest {
  /** Every address but those of the XML namespaces. */
  readonly addresses: readonly string[];
  /** The folder of the page that Excel opens. */
  readonly base: string;
  readonly version: string;
}

export function readManifest(xml: string): Manifest {
  const addresses = [
    ...xml
      .replace(/<!--[^]*?-->/g, '')
      .replace(/\sxmlns(:\w+)?="[^"]*"/g, '')
      .matchAll(/"(\w+:\/\/[^"]*)"/g),
  ].map(([, address = '']) => address);
  const [, page = ''] = /<SourceLocation DefaultValue="([^"]*)"/.exec(xml) ?? [];
  const [, version = ''] = /<Version>([^<]*)/.exec(xml) ?? [];
  return { addresses, base: page.slice(0, page.lastIndexOf('/') + 1), version };
}
