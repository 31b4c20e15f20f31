/** How the index looks: paper and slate by day, the other way round by night; verdicts carry their word besides. */
export const INDEX_STYLE = `
:root{color-scheme:light dark;--ink:#1d2a2b;--soft:#536466;--ground:#fbfaf6;--card:#fff;--line:#d9ded9;--link:#0b5a63;
--pass:#d9ecdf;--pass-ink:#15512f;--caution:#f6e7bd;--caution-ink:#614500;--fail:#f7d6cf;--fail-ink:#7d1d0c}
@media (prefers-color-scheme:dark){:root{--ink:#e6ebe7;--soft:#a3b1ae;--ground:#141a1b;--card:#1c2425;--line:#34403f;--link:#86cdd4;
--pass:#17402a;--pass-ink:#c4ecd2;--caution:#4a3907;--caution-ink:#f7e3ab;--fail:#5a1c10;--fail-ink:#ffd9d0}}
*{box-sizing:border-box}
body{margin:0;background:var(--ground);color:var(--ink);font:16px/1.5 system-ui,sans-serif}
header,main{max-width:76rem;margin:0 auto;padding:1rem 1.25rem}
h1{margin:.25rem 0;font-size:1.7rem}h2{margin:0 0 .5rem;font-size:1.15rem}
small{color:var(--soft);font-weight:400;font-size:.85rem}
a{color:var(--link)}
nav a{margin-right:1rem}
.figures{display:flex;flex-wrap:wrap;gap:.4rem 1.5rem;padding:0;margin:.25rem 0 .75rem;list-style:none}
.badge{display:inline-block;padding:.05rem .55rem;border-radius:.3rem;font-size:.85rem;font-weight:600;background:var(--line);color:var(--ink);white-space:nowrap}
.pass{background:var(--pass);color:var(--pass-ink)}.caution{background:var(--caution);color:var(--caution-ink)}
.fail,.wrong,.unmeasured{background:var(--fail);color:var(--fail-ink)}
.filters{position:sticky;top:0;z-index:1;display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:end;padding:.75rem 0;background:var(--ground);border-bottom:1px solid var(--line)}
.filters[hidden]{display:none}
.filters label{display:grid;font-size:.85rem;color:var(--soft)}
input,select,button{font:inherit;color:var(--ink);background:var(--card);border:1px solid var(--soft);border-radius:.3rem;padding:.3rem .5rem;min-height:2.4rem}
:focus-visible{outline:3px solid var(--link);outline-offset:2px}
#count{color:var(--soft);margin:.5rem 0}
section{background:var(--card);border:1px solid var(--line);border-radius:.5rem;padding:.9rem 1rem;margin:0 0 1rem;content-visibility:auto;contain-intrinsic-size:auto 16rem}
section[hidden],tr[hidden]{display:none}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;min-width:44rem}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;border-top:1px solid var(--line);font-weight:400}
thead th{color:var(--soft);font-size:.85rem;border-top:0}
tbody th small{display:block}
th.further{color:var(--soft);padding-left:1rem}
th img{float:left;margin-right:.7rem;object-fit:contain}
.n{font-variant-numeric:tabular-nums;white-space:nowrap}
details summary{cursor:pointer;color:var(--soft);font-size:.85rem}
details ul,.notes,.list ul{margin:.25rem 0;padding-left:1.1rem}
details ul{font-size:.85rem;max-width:34rem}
@media print{.filters,#count{display:none}section{break-inside:avoid}}
`;

/** Filters: a machine's section is shown while one of its rows answers to all of them. */
export const INDEX_SCRIPT = `
(function () {
  var form = document.querySelector('.filters');
  var fields = ['machine', 'kind', 'verdict', 'material'].map(function (id) { return document.getElementById(id); });
  var sections = Array.prototype.slice.call(document.querySelectorAll('section[data-machine]'));
  form.hidden = false;
  function show() {
    var machine = fields[0].value.trim().toLowerCase(), kind = fields[1].value, verdict = fields[2].value, material = fields[3].value;
    var machines = 0, rows = 0;
    sections.forEach(function (section) {
      var own = section.dataset;
      var fits = own.machine.indexOf(machine) >= 0 && (kind === '' || own.kind === kind);
      var wholly = verdict !== '' && own.verdict === verdict, shown = 0;
      var all = section.querySelectorAll('tbody tr');
      all.forEach(function (row) {
        var answers = (verdict === '' || row.dataset.verdict === verdict) && (material === '' || row.dataset.material === material);
        row.hidden = !answers;
        if (answers) shown++;
      });
      if (wholly && shown === 0 && material === '') { all.forEach(function (row) { row.hidden = false; }); shown = all.length; }
      section.hidden = !fits || (shown === 0 && (all.length > 0 || verdict !== '' || material !== ''));
      if (!section.hidden) { machines++; rows += shown; }
    });
    document.getElementById('none').hidden = machines > 0;
    document.getElementById('count').textContent = machines + ' of ' + sections.length + ' machines, ' + rows + ' files';
  }
  form.addEventListener('input', show);
  form.addEventListener('submit', function (event) { event.preventDefault(); });
  form.addEventListener('reset', function (event) {
    event.preventDefault();
    fields.forEach(function (field) { field.value = ''; });
    show();
  });
  show();
})();
`;
