import { xmlText as text } from '../output/xml-text.js';

/** SHA-256 of a text as base64, for a page's security policy. */
export type HashOf = (text: string) => string;

/** A page of a fleet that takes nothing from elsewhere. */
export interface FramedPage {
  readonly title: string;
  readonly style: string;
  /** what runs in it, if anything does */
  readonly script?: string;
  /** whether it shows pictures of the folder that it lies in */
  readonly pictures?: boolean;
  /** HTML, piece by piece */
  readonly body: Iterable<string>;
}

/** The page around a body: its security policy lets in its own style and script by their hashes, and nothing else. */
export function* framed(
  { title, style, script, pictures = false, body }: FramedPage,
  hashOf: HashOf,
): Iterable<string> {
  const own = (part: string) => `'sha256-${hashOf(part)}'`;
  const policy = [
    `default-src 'none'`,
    ...(pictures ? [`img-src 'self' file:`] : []),
    `style-src ${own(style)}`,
    ...(script === undefined ? [] : [`script-src ${own(script)}`]),
    `base-uri 'none'`,
    `form-action 'none'`,
  ];
  yield `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy.join('; ')}">
<title>${text(title)}</title>
<style>${style}</style>
</head>
<body>
`;
  yield* body;
  yield `${script === undefined ? '' : `<script>${script}</script>\n`}</body>\n</html>\n`;
}
