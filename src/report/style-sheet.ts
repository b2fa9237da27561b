// How does the page look? On a phone, on a desk, in the dark and on paper.
// Follows WCAG 2.2, 1.4.3 (contrast), 1.4.10 (reflow at 320 px); CSS Paged Media 3 for the foot of the pages.
// Does not cover a house style: an app that wants its own adds a style sheet after this one.

/** The style sheet, without what depends on the record. */
export const styleSheet = `
:root{color-scheme:light dark;--ink:#1c2126;--soft:#4c555e;--line:#c3c9cf;--bed:#f2f4f6;--paper:#fff;
--pass:#14632f;--fail:#a11616;--open:#7a4b00;--link:#0a4f8f}
@media (prefers-color-scheme:dark){:root{--ink:#e6e9ec;--soft:#aab3bc;--line:#434b53;--bed:#20262b;--paper:#14181b;
--pass:#7fd69b;--fail:#ff9d94;--open:#f0c069;--link:#8fc4f7}}
*{box-sizing:border-box}
body{margin:0 auto;max-width:62rem;padding:1rem;background:var(--paper);color:var(--ink);
font:1rem/1.5 system-ui,sans-serif;overflow-wrap:anywhere}
a{color:var(--link)}
h1{font-size:1.7rem;line-height:1.2;margin:0}
h2{font-size:1.3rem;margin:2.2rem 0 .6rem;padding-bottom:.2rem;border-bottom:2px solid var(--ink)}
h3{font-size:1.1rem;margin:1.6rem 0 .4rem}
h1,h2,h3,p,li,th,td,dd,caption{unicode-bidi:plaintext}
p,ul,ol{margin:.5rem 0}
ul,ol{padding-left:1.3rem}
li{margin:.15rem 0}
.over,.about{color:var(--soft);margin:0}
.note{color:var(--soft);font-size:.88em}
#part-verdict h2{margin-top:1rem;border:0;padding:0}
#part-verdict h2 .mark{font-size:1.2em}
#part-actions ol{font-weight:600}
#part-holds ul{list-style:none;padding:0}
#part-cautions,#part-limits{font-size:.92em}
.part{clear:both}
.mark{display:inline-block;padding:0 .5em;border:2px solid;border-radius:.2em;font-size:.8em;line-height:1.5;white-space:nowrap}
.pass{color:var(--pass)}.fail{color:var(--fail)}.open{color:var(--open);border-style:dashed}.none{color:var(--soft);border-style:dotted}
.pass::before{content:"\\2713\\a0"/""}.fail::before{content:"\\2715\\a0"/""}.open::before{content:"?\\a0"/""}
table{border-collapse:collapse;width:100%;margin:1rem 0;font-size:.92rem;font-variant-numeric:tabular-nums}
caption{text-align:start;font-weight:600;padding:.3rem 0}
th,td{text-align:start;vertical-align:top;padding:.3rem .5rem;border-top:1px solid var(--line)}
thead th{background:var(--bed);border-top:0;font-weight:600;overflow-wrap:normal}
tbody th{font-weight:400;min-width:6.5rem}
table:not(.wide) thead th:first-child{width:24%}
.mark,td:has(>.mark){min-width:max-content}
#part-overview table{width:auto;margin:.5rem 0}
#part-overview thead,:is(#part-overview,#part-steps) caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
figure{margin:.7rem 0;overflow:hidden}
figure svg{display:block;width:100%;max-width:26rem;height:auto}
figcaption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.part::after{content:"";display:block;clear:both}
#part-sources td:last-child{white-space:nowrap}
@media (min-width:48rem){figure{float:right;clear:right;width:24rem;margin:.3rem 0 .5rem 1.5rem}
.part:has(table) figure{float:none;display:inline-block;vertical-align:top;width:31%;margin:.3rem 2% .3rem 0}}
@media (max-width:40rem){
body{padding:.8rem}
.mark{white-space:normal}
.mark,td:has(>.mark){min-width:0}
#part-overview :is(table,tbody,tr){display:block;width:100%}
#part-overview tr{border-top:1px solid var(--line);padding:.2rem 0}
#part-overview tbody :is(th,td){display:inline;border:0;padding:0 .3rem 0 0}
h2{margin:1.4rem 0 .4rem}
h3{margin:1rem 0 .2rem}
tbody th{min-width:4.5rem}
th,td{padding:.3rem .25rem}
.wide,.wide tbody,.wide tr,.wide caption,.wide tbody th,.wide td{display:block}
.wide thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.wide tr{border-top:1px solid var(--line);padding:.4rem 0}
.wide tbody th{font-weight:600}
.wide tbody th,.wide td{border:0;padding:.1rem 0}
.wide td{position:relative;padding-left:8rem}
.wide td::before{content:attr(data-head);color:var(--soft);position:absolute;left:0;width:7.5rem}
table:not(.wide) thead th:first-child{width:34%}
}
@media print{
:root{color-scheme:light;--ink:#000;--soft:#444;--line:#999;--bed:#eee;--paper:#fff;--pass:#14632f;--fail:#a11616;--open:#7a4b00;--link:#000}
body{max-width:none;padding:0;font-size:9pt;line-height:1.3}
h1{font-size:16pt}
h2{font-size:12pt;margin:.9rem 0 .3rem;border-bottom-width:1px}
h3{font-size:10.5pt;margin:.7rem 0 .1rem}
a{text-decoration:none}
h2,h3,caption{break-after:avoid}
p:has(+ul),p:has(+table){break-after:avoid}
tr,figure,li{break-inside:avoid}
thead{display:table-header-group;break-after:avoid}
tbody tr:first-child{break-before:avoid}
p,ul,ol{margin:.2rem 0}
figure{float:right;clear:right;width:78mm;margin:0 0 2mm 5mm}
.part:has(table) figure{float:none;display:inline-block;vertical-align:top;width:57mm;margin:1mm 2mm 1mm 0}
#part-overview tbody{display:block;columns:2}
#part-overview tr{display:block}
#part-appendix{break-before:page}
table{font-size:8pt;line-height:1.25;margin:.35rem 0}
caption{padding:.15rem 0}
th,td{padding:.08rem .4rem}
#part-cautions,[id^=part-plan-]{columns:2;column-gap:8mm}
#part-cautions h2,[id^=part-plan-] h2{column-span:all}
#part-plan-sources ul{font-size:7pt;line-height:1.2}
thead th{print-color-adjust:exact}
p,li{orphans:3;widows:3}
}
`;

/** The foot of each printed page: the name of the record and the number of the page. */
export function pageFoot(name: string): string {
  const escaped = [...name.slice(0, 80)]
    .map((one) => (/[\w ]/.test(one) ? one : `\\${one.codePointAt(0)?.toString(16)} `))
    .join("");
  const font = "font:8pt system-ui,sans-serif;color:#444";
  return `@page{margin:11mm 13mm 15mm;@bottom-left{content:"${escaped}";${font}}@bottom-right{content:counter(page) " / " counter(pages);${font}}}
`;
}
