/** What is proven without Excel, by what stand-in, and what that leaves open. */
export interface Claim {
  readonly claim: string;
  readonly standIn: string;
  readonly test: string;
  /** As it stands in the test. */
  readonly title: string;
  /** What only Excel can show. */
  readonly open: string;
}
