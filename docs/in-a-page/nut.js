// A nut made in a page: bundled with the kernel's bytes inside, it asks for nothing.
import { createKernel, makePart } from 'leadwright';
import wasm from 'manifold-3d/manifold.wasm';

const [sheet, answer, shelf] = ['sheet', 'answer', 'files'].map((id) => document.getElementById(id));
const kernel = createKernel({ wasm });
document.getElementById('make').addEventListener('click', async () => {
  const { report, files } = await makePart(sheet.value, { kernel }).catch((error) => ({
    report: { sentence: error.message },
    files: [],
  }));
  answer.textContent = report.sentence;
  shelf.replaceChildren();
  for (const { name, bytes } of files)
    shelf.append(
      Object.assign(document.createElement('a'), {
        download: name,
        href: URL.createObjectURL(new Blob([bytes])),
        textContent: name,
      }),
    );
});
