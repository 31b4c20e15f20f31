/** How the index looks: paper and slate by day, the other way round by night; verdicts carry their word besides. */
export const INDEX_STYLE = `
:root{color-scheme:light dark;--ink:#1d2a2b;--soft:#536466;--ground:#fbfaf6;--card:#fff;--line:#d9ded9;--link:#0b5a63;
--pass:#d9ecdf;--pass-ink:#15512f;--caution:#f6e7bd;--caution-ink:#614500;--fail:#f7d6cf;--fail-ink:#7d1d0c}
@media (prefers-color-scheme:dark){:root{--ink:#e6ebe7;--soft:#a3b1ae;--ground:#141a1b;--card:#1c2425;--line:#34403f;--link:#86cdd4;
--pass:#17402a;--pass-ink:#c4ecd2;--caution:#4a3907;--caution-ink:#f7e3ab;--fail:#5a1c10;--fail-ink:#ffd9d0}}
@page{size:A4;margin:14mm}
*{box-sizing:border-box}
body{margin:0;background:var(--ground);color:var(--ink);font:16px/1.5 system-ui,sans-serif;overflow-wrap:anywhere}
header,main{max-width:90rem;margin:0 auto;padding:1rem 1.25rem}
h1{margin:.25rem 0;font-size:1.7rem}h2{margin:0 0 .5rem;font-size:1.15rem}h3{margin:0;font-size:1rem}
small{color:var(--soft);font-weight:400;font-size:.85rem}
a{color:var(--link)}
nav a{margin-right:1rem}
.figures{display:flex;flex-wrap:wrap;gap:.4rem 1.5rem;padding:0;margin:.25rem 0 .75rem;list-style:none}
.badge{display:inline-block;padding:.05rem .55rem;border-radius:.3rem;font-size:.85rem;font-weight:600;background:var(--line);color:var(--ink);white-space:nowrap}
.badge.pass{background:var(--pass);color:var(--pass-ink)}.badge.caution{background:var(--caution);color:var(--caution-ink)}
.badge.fail,.badge.wrong,.badge.unmeasured{background:var(--fail);color:var(--fail-ink)}
.filters{position:sticky;top:0;z-index:1;display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:end;padding:.75rem 0;background:var(--ground);border-bottom:1px solid var(--line)}
.filters label{display:grid;font-size:.85rem;color:var(--soft)}
@media (max-width:40rem){.filters{position:static;display:grid;grid-template-columns:1fr 1fr}.filters label>*{min-width:0;width:100%}}
input,select,button{font:inherit;color:var(--ink);background:var(--card);border:1px solid var(--soft);border-radius:.3rem;padding:.3rem .5rem;min-height:2.4rem}
:focus-visible{outline:3px solid var(--link);outline-offset:2px}
.view{display:flex;flex-wrap:wrap;gap:.25rem .9rem;margin:.75rem 0 0;padding:0;border:0}
.view legend{float:left;margin-right:.2rem;padding:0;color:var(--soft);line-height:2.4rem}
.view label{display:flex;gap:.4rem;align-items:center}
#count{color:var(--soft);margin:.25rem 0 .5rem;min-height:1.5em}
main:has(#by-part:checked) .machines,main:has(#by-machine:checked) .parts{display:none}
[hidden]{display:none!important}
.block{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,21rem),1fr));gap:.4rem .6rem;align-items:start;margin-bottom:.4rem;content-visibility:auto;contain-intrinsic-size:auto 32rem}
@media (max-width:46rem){.block{contain-intrinsic-size:auto 133rem}}
.parts .block{contain-intrinsic-size:auto 108rem}
.filtered .block{content-visibility:visible}
.machines details,article{padding:.35rem .7rem;background:var(--card);border:1px solid var(--line);border-radius:.4rem}
.machines summary{display:flex;gap:.6rem;align-items:baseline;cursor:pointer;line-height:1.6}
.machines summary small{flex:1}
.machines summary::before{content:'▸';color:var(--soft)}.machines [open] summary::before{content:'▾'}
.machines ul,article ul{margin:.25rem 0;padding-left:1.1rem}
.machines li small{display:block}
.machines li::marker{color:var(--soft)}
li.fail,li.wrong,li.unmeasured,li.missing{color:var(--fail-ink)}
@media (prefers-color-scheme:dark){li.fail,li.wrong,li.unmeasured,li.missing{color:#ff9d8f}}
article p{margin:.15rem 0}
article img{float:left;margin:.1rem .7rem .1rem 0;object-fit:contain}
li a[download]{display:inline-block;margin-right:.3rem;font-size:.9em}
details summary{cursor:pointer}
article details,.list details{font-size:.85rem;clear:left}
article summary,.list summary{color:var(--soft)}
.list{padding:.9rem 0 0;margin:1rem 0 0;border-top:1px solid var(--line)}
.list ul{margin:.25rem 0;padding-left:1.1rem}
@media print{.filters,.view,#count{display:none}.block{display:block;content-visibility:visible}.machines details,article{break-inside:avoid;margin-bottom:.3rem}h2{break-after:avoid}}
`;

/** Filters and the count of what is left; an entry that is left alone opens. Machines are found by the names of their parts too. */
export const INDEX_SCRIPT = `
(function () {
  var form = document.querySelector('.filters'), main = document.querySelector('main');
  var fields = ['machine', 'kind', 'verdict', 'material'].map(function (id) { return document.getElementById(id); });
  var byPart = document.getElementById('by-part');
  function list(from, what) { return Array.prototype.slice.call(from.querySelectorAll(what)); }
  var machines = list(document, 'details[data-machine]').map(function (box) {
    var own = list(box, 'li[data-part]').map(function (item) {
      return { box: item, verdict: item.dataset.verdict, materials: item.dataset.material.split('|'),
        files: item.querySelectorAll('a[download]').length };
    });
    return { box: box, find: box.textContent.toLowerCase(), kind: box.dataset.kind, verdict: box.dataset.verdict, parts: own };
  });
  var parts = list(document, 'article').map(function (box) {
    return { box: box, find: box.textContent.toLowerCase(), verdict: box.dataset.verdict,
      materials: box.dataset.material.split('|'), pieces: Number(box.dataset.pieces) };
  });
  var blocks = list(document, '.block');
  form.hidden = false;
  function hide(box, isHidden) { if (box.hidden !== isHidden) box.hidden = isHidden; }
  function show() {
    var find = fields[0].value.trim().toLowerCase(), kind = fields[1].value, verdict = fields[2].value, material = fields[3].value;
    var none = find === '' && kind === '' && verdict === '' && material === '';
    function answers(part) { return (verdict === '' || part.verdict === verdict) && (material === '' || part.materials.indexOf(material) >= 0); }
    var seen = { machines: 0, parts: 0, files: 0, distinct: 0, pieces: 0 }, only = null;
    machines.forEach(function (machine) {
      var fits = (find === '' || machine.find.indexOf(find) >= 0) && (kind === '' || machine.kind === kind);
      var left = fits ? machine.parts.filter(answers) : [];
      var wholly = fits && material === '' && verdict !== '' && machine.verdict === verdict && left.length === 0;
      if (wholly) left = machine.parts;
      var isShown = fits && (left.length > 0 || wholly || (material === '' && verdict === ''));
      hide(machine.box, !isShown);
      if (!isShown) return;
      machine.parts.forEach(function (part) { hide(part.box, left.indexOf(part) < 0); });
      seen.machines++; seen.parts += left.length; only = machine.box;
      left.forEach(function (part) { seen.files += part.files; });
    });
    parts.forEach(function (part) {
      var isShown = (find === '' || part.find.indexOf(find) >= 0) && answers(part);
      hide(part.box, !isShown);
      if (isShown) { seen.distinct++; seen.pieces += part.pieces; }
    });
    main.classList.toggle('filtered', !none);
    blocks.forEach(function (block) { hide(block, !none && !block.querySelector(':scope > :not([hidden])')); });
    if (!none && seen.machines === 1) only.open = true;
    fields[1].disabled = byPart.checked;
    document.getElementById('none').hidden = (byPart.checked ? seen.distinct : seen.machines) > 0;
    document.getElementById('count').textContent = byPart.checked
      ? seen.distinct + ' of ' + parts.length + ' distinct parts, ' + seen.pieces + ' pieces'
      : seen.machines + ' of ' + machines.length + ' machines, ' + seen.parts + ' parts, ' + seen.files + ' files';
  }
  form.addEventListener('input', show);
  document.querySelector('.view').addEventListener('change', show);
  form.addEventListener('submit', function (event) { event.preventDefault(); });
  form.addEventListener('reset', function (event) {
    event.preventDefault();
    fields.forEach(function (field) { field.value = ''; });
    show();
  });
  show();
})();
`;
