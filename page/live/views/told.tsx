import { textFields } from '../../../src/sheet/edit-text.js';
import type { Fault } from '../../../src/units/faults.js';
import { withField } from '../state/state.js';

interface Props {
  readonly sheet: string;
  readonly write: (sheet: string) => void;
  readonly mistakes: readonly Fault[];
}

/** What was told, section by section: every field of the sheet with a single value, to be changed in place. */
export function ToldFields({ sheet, write, mistakes }: Props) {
  const fields = textFields(sheet);
  const sections = [...new Set(fields.map(({ path }) => path[0]!))];
  return (
    <section class="card told" aria-label="As told">
      <h2>As told</h2>
      {sections.map((section) => {
        const own = fields.filter(({ path }) => path[0] === section);
        return (
          <p key={section}>
            <strong>{words(section)}</strong>{' '}
            {own.map(({ path, value }) => {
              const id = path.join('.');
              const wrong = mistakes.find((one) => one.path === id);
              return (
                <label key={id} class={wrong ? 'blank wrong' : 'blank'}>
                  {path.length > 1 && <span>{words(path.slice(1).join(' '))}</span>}
                  <input
                    value={value}
                    size={Math.max(3, value.length)}
                    aria-label={words(path.join(' '))}
                    aria-invalid={wrong !== undefined}
                    title={wrong?.allowed ?? ''}
                    autocomplete="off"
                    onInput={(e) => write(withField(sheet, path, e.currentTarget.value))}
                  />
                </label>
              );
            })}
          </p>
        );
      })}
    </section>
  );
}

function words(name: string): string {
  return name.replaceAll('_', ' ');
}
