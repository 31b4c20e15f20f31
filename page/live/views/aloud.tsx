import { useEffect, useRef, useState } from 'preact/hooks';
import { type Answer, wordText } from '../../../src/output/answers/answer.js';
import { changedWords } from '../state/moved.js';

/** A pause in typing before changed words are said [ms]. */
const PAUSE = 700;

/** For who hears the page: which words changed, once typing rests. */
export function Aloud({ questions }: { readonly questions: readonly Answer[] }) {
  const said = useRef<ReadonlyMap<string, string>>(new Map());
  const [words, setWords] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => {
      const changed = changedWords(said.current, questions, wordText);
      said.current = new Map(questions.map((answer) => [answer.question, wordText(answer)]));
      if (changed !== '') setWords(changed);
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [questions]);
  return (
    <p class="aloud" role="status">
      {words}
    </p>
  );
}
