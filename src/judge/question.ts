/** What a part kind asks of a design; each check answers one of them. */
export interface Question {
  /** as checks name it, such as `goes-on` */
  readonly id: string;
  /** as people read it, such as `Goes on?` */
  readonly title: string;
  /** left out where nothing was told of it, unless that can hurt */
  readonly onlyWhereTold?: true;
}
