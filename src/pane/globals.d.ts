/** The version in package.json, put in by webpack. */
declare const BOSSWRIGHT_VERSION: string;
