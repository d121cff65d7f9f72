/**
 * How the sheet looks: one column to read on a screen, light or dark as its reader's device; on paper always dark ink on
 * white, with numbered pages of whatever size is in the printer. Nothing is told by colour alone.
 */
export const SHEET_STYLE = `
:root {
  color-scheme: light dark;
  --paper: #ffffff; --ink: #1b2225; --soft: #4f5b61; --line: #c3ccd0; --shade: #f1f4f5;
  --accent: #1f4c58; --error: #9a1a1a; --warning: #714500; --hint: #17506e; --mark: #ffe9a3;
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --paper: #14191b; --ink: #e7ecee; --soft: #a9b6bc; --line: #3d494f; --shade: #1d2528;
    --accent: #93cbd8; --error: #ffa099; --warning: #f3c566; --hint: #93ccee; --mark: #665200;
  }
}
* { box-sizing: border-box; }
body {
  margin: 0 auto; padding: 2rem 1.25rem 4rem; max-width: 50rem;
  background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, -apple-system, "Segoe UI", "Noto Sans", "Liberation Sans", sans-serif;
  overflow-wrap: break-word;
}
h1, h2, h3, h4 { line-height: 1.25; font-family: Georgia, "Liberation Serif", "Noto Serif", serif; break-after: avoid; }
h1 { font-size: 2rem; margin: 0; color: var(--accent); }
h2 { font-size: 1.6rem; margin: 2.5rem 0 0.25rem; }
h3 { font-size: 1.25rem; margin: 2.25rem 0 0.75rem; padding-bottom: 0.2rem; border-bottom: 2px solid var(--accent); }
h4 { font-size: 1rem; margin: 1.5rem 0 0.4rem; }
p { margin: 0.3rem 0; }
a { color: var(--accent); }
a:focus-visible, .scroll:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.tool, .path, .place, .about, .related, .stated, .seen, .lead { color: var(--soft); }
.summary { font-size: 1.1rem; margin-top: 0.75rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { padding: 0.35rem 0.6rem; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); }
thead th { border-bottom: 2px solid var(--soft); vertical-align: bottom; font-size: 0.9rem; }
tbody th { font-weight: 400; }
tfoot th, tfoot td { font-weight: 700; border-bottom: 0; }
th.number, td.number { text-align: right; }
ol.findings { list-style: none; padding: 0; margin: 0; }
.finding {
  margin: 1rem 0; padding: 0.6rem 0.9rem; break-inside: avoid;
  border: 1px solid var(--line); border-left: 5px solid var(--severity);
}
.error { --severity: var(--error); }
.warning { --severity: var(--warning); }
.hint { --severity: var(--hint); }
.severity { color: var(--severity); }
.message { font-size: 1.05rem; }
.fix { font-weight: 600; }
.about { font-size: 0.9rem; }
.tick { float: right; }
.box { display: inline-block; width: 0.85em; height: 0.85em; border: 1.5px solid currentColor; vertical-align: -0.08em; }
blockquote { margin: 0.6rem 0; padding: 0.4rem 0.8rem; background: var(--shade); }
mark { background: var(--mark); color: inherit; font-weight: 700; padding: 0 0.15em; text-decoration: underline; }
.figure { margin-bottom: 1.25rem; font-size: 0.92rem; }
.figure th, .figure td { padding: 0.25rem 0.6rem 0.25rem 0; }
.figure th:nth-child(-n + 2), .figure td:nth-child(2) { white-space: nowrap; }
.figure td:nth-child(3) { width: 22%; }
.figure td:nth-child(4) { width: 52%; }
.steps { margin: 0; padding-left: 1.4rem; }
.pictures { display: flex; flex-wrap: wrap; gap: 1.5rem 1.25rem; }
figure { margin: 0; break-inside: avoid; }
figure.wide { width: 100%; }
figure.narrow { width: calc(50% - 0.65rem); }
figure svg { display: block; width: 100%; height: auto; max-height: 60vh; margin: 0.4rem 0; }
figure text { font-family: system-ui, "Liberation Sans", sans-serif; }
.seen, .keys { font-size: 0.85rem; }
.ruled div { height: 2rem; border-bottom: 1px solid var(--soft); }
.sign { display: grid; grid-template-columns: 2fr 1fr 2fr; gap: 1.5rem; margin-top: 3.5rem; }
.sign p { border-top: 1px solid var(--ink); padding-top: 0.25rem; }
.signature { break-inside: avoid; }
dt { font-weight: 700; margin-top: 1rem; break-after: avoid; }
dd { margin: 0.2rem 0 0; }
code { font-family: ui-monospace, "Liberation Mono", monospace; font-size: 0.92em; background: var(--shade); padding: 0 0.2em; }
footer { margin-top: 3rem; padding-top: 0.75rem; border-top: 1px solid var(--line); color: var(--soft); font-size: 0.9rem; }
@media (max-width: 34rem) {
  figure.narrow { width: 100%; }
  .sign { grid-template-columns: 1fr; gap: 2.5rem; }
}
@page { margin: 16mm 15mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt sans-serif; } }
@media print {
  :root { color-scheme: light; }
  html { font-size: 9.5pt; }
  body { max-width: none; padding: 0; line-height: 1.4; }
  .coverage .scroll, .remarks { break-inside: avoid; }
  h1 { font-size: 18pt; } h2 { font-size: 15pt; } h3 { font-size: 12pt; margin-top: 16pt; } h4 { font-size: 9.5pt; margin: 8pt 0 2pt; }
  .figure { font-size: 8.5pt; margin-bottom: 6pt; }
  article + article { break-before: page; }
  a { color: inherit; text-decoration: none; }
  .scroll { overflow: visible; }
  .finding, blockquote, mark, figure { print-color-adjust: exact; }
  figure svg { max-height: 90mm; }
  tr, .steps li, .figure p { break-inside: avoid; }
  thead { display: table-header-group; }
  tfoot { display: table-row-group; }
  p, li, dd { orphans: 3; widows: 3; }
}
`;
