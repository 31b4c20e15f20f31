import { START_KINDS } from '../../sheet/start-kinds.js';
import type { Command } from '../command.js';

/** The parser's own command, which would end the process; ours hands on what it prints. */
const OWN = 'completion-script';

export const completionCommand: Command = {
  name: 'completion',
  options: {},
  add: (cli) =>
    cli
      .completion(
        OWN,
        false,
        (
          current: string,
          { _: words = [] }: { readonly _?: readonly (string | number)[] },
          usual: () => void,
          done: (words: string[]) => void,
        ) => {
          if (words.includes('new') && !current.startsWith('-')) done([...START_KINDS]);
          else usual();
        },
      )
      .command(
        'completion',
        'print a script that completes commands and options in bash or zsh',
        (call) => call.example('leadwright completion', 'put what it prints into ~/.bashrc or ~/.zshrc'),
        () => {
          cli.showCompletionScript();
        },
      ),
};
