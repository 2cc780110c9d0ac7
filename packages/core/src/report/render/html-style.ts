import { type ColourName, colour, customProperties, palette, printed } from '../figures/index.js';

/** A line of running stitch, `long` on the face and `short` below it. */
const stitch = (thread: ColourName, direction: '90deg' | '180deg', long = 9, short = 6): string =>
  `repeating-linear-gradient(${direction},${colour(thread)} 0 ${long}px,transparent ${long}px ${long + short}px)`;

const screen = `
:root{color-scheme:light dark;${customProperties('light')}}
@media screen and (prefers-color-scheme:dark){:root{${customProperties('dark')}}}
*{box-sizing:border-box}
html{scroll-padding-top:1.5rem;-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;padding:0 1.15rem 4rem 1.9rem;background:${colour('paper')};color:${colour('ink')};
font:1rem/1.55 system-ui,sans-serif;font-variant-numeric:tabular-nums;overflow-wrap:break-word;counter-reset:section}
body::before{content:"";position:fixed;inset:0 auto 0 0;width:.8rem;border-right:1px solid ${colour('hair')};
background:${stitch('madder', '180deg')} center/2px 100% no-repeat,${colour('cloth')}}
a{color:${colour('indigo')};text-decoration-thickness:1px;text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:2px solid ${colour('indigo')};outline-offset:3px}
main:focus{outline:none}
.skip{position:absolute;left:-100vw;z-index:1;padding:.5rem 1rem;background:${colour('paper')};border:1px solid ${colour('indigo')}}
.skip:focus{left:1.9rem;top:.5rem}
header{padding:2.4rem 0 1.5rem;max-width:62rem;
background:${stitch('madder', '90deg')} 0 calc(100% - 5px)/100% 2px no-repeat,${stitch('indigo', '90deg')} 7px 100%/100% 2px no-repeat}
h1{margin:0;font-size:clamp(1.65rem,1.2rem + 2.1vw,2.5rem);font-weight:650;line-height:1.15;letter-spacing:-.015em;text-wrap:balance}
.subtitle{margin:.55rem 0 0;color:${colour('muted')};font-size:1.05rem;max-width:44rem;text-wrap:pretty}
nav{margin:1.4rem 0 0;font-size:.9rem;color:${colour('muted')}}
nav ol{margin:0;padding:0;list-style:none;counter-reset:entry;display:flex;flex-wrap:wrap;gap:.3rem 1.3rem}
nav li{counter-increment:entry}
nav li::before{content:counter(entry) / "";margin-right:.5em;color:${colour('indigo')}}
nav a{color:inherit;text-decoration:none}
nav a:hover{color:${colour('ink')};text-decoration:underline}
section{max-width:62rem;margin:0}
h2,.facts{max-width:46rem}
h2{counter-increment:section;margin:3.2rem 0 1.2rem;padding-bottom:.55rem;font-size:1.4rem;font-weight:650;line-height:1.25;letter-spacing:-.008em;
background:${stitch('madder', '90deg')} 0 100%/100% 2px no-repeat}
h2::before{content:counter(section) / "";margin-right:.7em;color:${colour('indigo')};font-weight:400}
h3{margin:2.2rem 0 .7rem;font-size:1.08rem;font-weight:650;line-height:1.3}
p{margin:0 0 1rem;max-width:40rem;text-wrap:pretty}
ul{margin:0 0 1rem;padding-left:1.2rem;max-width:40rem}
li{margin:.25rem 0}
li::marker{color:${colour('madder')}}
.unit{color:${colour('muted')};font-weight:400;white-space:nowrap}
.facts{margin:1.1rem 0 1.6rem;border-top:1px solid ${colour('hair')}}
.facts>div{display:grid;grid-template-columns:minmax(0,16rem) minmax(0,9rem) minmax(0,1fr);gap:0 1.2rem;align-items:baseline;padding:.38rem 0;border-bottom:1px solid ${colour('hair')}}
.facts dd{margin:0;min-width:0;overflow-wrap:anywhere}
.facts dt,.facts .remark{color:${colour('muted')}}
.facts .remark{font-size:.9rem}
.facts .value{font-weight:600}
.facts .value .unit{font-weight:400}
.facts .long .value{grid-column:2/-1;font-weight:400}
.facts .long .remark{grid-column:2/-1}
.opening>:first-child{margin-top:2rem}
.opening .facts{max-width:none;display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,11.5rem),1fr));border:0;gap:1.3rem 1.6rem}
.opening .facts>div{display:block;padding:.55rem 0 0;border:0;border-top:1px solid ${colour('ink')}}
.opening .facts dt{font-size:.9rem}
.opening .facts .value{font-size:1.55rem;line-height:1.25;font-weight:600;letter-spacing:-.01em}
.opening .facts .value .unit{font-size:1rem;letter-spacing:0}
.table{margin:1.5rem 0 1.9rem;overflow-x:auto}
.switch{margin:1.2rem 0 0;font-size:.9rem}
.step{max-width:62rem;margin:1.4rem 0 2rem;padding-left:1rem;border-left:2px solid ${colour('hair')}}
.step h3{margin:0 0 .2rem;font-size:1rem;font-weight:650}
.step h3 .mark{color:${colour('indigo')};font-weight:400;margin-right:.5em}
.step .of,.step .origin,.step .remark{font-size:.9rem;color:${colour('muted')};margin:.2rem 0;max-width:none}
.step code{font-size:.85em;overflow-wrap:anywhere}
.step .origin .source{white-space:normal}
.formula{padding:.35rem 0}
.formula .plain{display:none;margin:0;font:.88rem/1.5 ui-monospace,monospace;white-space:pre-wrap}
.formula .math>div{margin:.3rem 0;line-height:2}
.formula .math>div+div{padding-left:2.4rem}
math{font-family:"Cambria Math","STIX Two Math","Latin Modern Math","DejaVu Math TeX Gyre",math,serif;font-size:1.05rem}
.formula .spelt,.or-text>:last-child{font-size:.9rem;line-height:1.5}
.or-text>:last-child{display:none}
@media (max-width:60rem){.or-text.sheet>:first-child{display:none}.or-text.sheet>:last-child{display:inline}}
@media print{.switch{display:none}.step h3,.step .of{break-after:avoid}.formula{break-inside:avoid}.or-text.sheet>:first-child{display:none}.or-text.sheet>:last-child{display:inline}}
@media screen and (max-width:36rem){math{font-size:.85rem}.matrix math{font-size:.68rem}.formula .math>div{line-height:1.6}.formula .math>div+div{padding-left:1rem}
.or-text>:first-child{display:none}.or-text>:last-child{display:inline}}
body:has(#plain-formulas:checked) .formula .math{display:none}
body:has(#plain-formulas:checked) .formula .plain{display:block}
table{border-collapse:collapse;font-size:.94rem;line-height:1.4}
caption,figcaption{padding:0 0 .6rem;text-align:left;font-size:.94rem;color:${colour('muted')};text-wrap:pretty}
caption{contain:inline-size}
caption>span{display:inline-block;position:sticky;left:0;width:max-content;max-width:min(40rem,100vw - 3.2rem)}
.mark{margin-right:.45em;color:${colour('indigo')};font-weight:600;white-space:nowrap}
th,td{padding:.34rem .95rem;text-align:left;vertical-align:baseline;font-weight:400}
td,tbody th{overflow-wrap:anywhere}
th:first-child,td:first-child{padding-left:.1rem}
th:last-child,td:last-child{padding-right:.1rem}
thead>tr>*{vertical-align:bottom;font-weight:600;padding-bottom:.45rem;border-bottom:1.5px solid ${colour('ink')};line-height:1.25}
thead .unit{display:block;font-size:.88em;margin-top:.1rem}
tbody th,tbody td{border-bottom:1px solid ${colour('hair')}}
tbody tr:last-child>*{border-bottom-color:${colour('ink')}}
tbody tr:hover>*{background:${colour('cloth')}}
.number{text-align:right;white-space:nowrap}
tbody .short{white-space:nowrap}
tbody td:not(.number,.short),tbody th:not(.number,.short){min-width:11rem}
thead .number,.words{white-space:normal}
.words{min-width:9rem}
.pad{visibility:hidden;user-select:none}
figure{margin:1.7rem 0 2.1rem}
.canvas{overflow-x:auto;padding-bottom:.3rem}
figcaption{padding:.7rem 0 0;max-width:40rem}
.notes{margin:1.2rem 0 1.6rem;max-width:42rem;font-size:.94rem}
.notes ul{margin:0;padding:0;list-style:none;max-width:none}
.notes li{margin:.55rem 0;padding:.1rem 0 .1rem 1.05rem;background:${stitch('indigo', '180deg', 6, 4)} 0 0/2px 100% no-repeat}
.notes .warning{background-image:${stitch('madder', '180deg', 6, 4)}}
.notes strong{margin-right:.25em;color:${colour('indigo')};font-weight:600}
.notes .warning strong{color:${colour('madder')}}
.source{color:${colour('muted')};white-space:nowrap}
.caution{margin:1.8rem 0;padding:1rem 1.2rem .9rem;max-width:44rem;background:${colour('cloth')};outline:1px dashed ${colour('madder')};outline-offset:-5px}
.caution .title{margin:0 0 .5rem;font-weight:650;color:${colour('madder')}}
.caution ul{margin:0}
.sources{padding:0;list-style:none;font-size:.94rem;max-width:44rem}
.sources li{margin:.6rem 0;padding-left:1.2rem;text-indent:-1.2rem}
.sources .key{font-weight:600;margin-right:.3em}
.sources .access{color:${colour('muted')};white-space:nowrap}
.sources .access::before{content:"("}
.sources .access::after{content:")"}
:target{scroll-margin-top:1.5rem}
.sources :target{background:${colour('cloth')}}
`;

/** Room enough: contents beside the text, held in view. */
const wide = `
@media screen and (min-width:68rem){
body{display:grid;grid-template-columns:13rem minmax(0,1fr);column-gap:3.4rem;max-width:82rem;margin:0 auto;padding:0 2.5rem 5rem 3.5rem;align-content:start}
body::before{width:1.5rem}
header,main{grid-column:2}
header{grid-row:1;padding-top:3.6rem}
main{grid-row:2/span 2;min-width:0}
nav{grid-column:1;grid-row:2/span 2;position:sticky;top:1.6rem;align-self:start;margin-top:2.4rem;max-height:calc(100vh - 3.2rem);overflow-y:auto}
nav ol{display:block}
nav li{display:flex;margin:.1rem 0;padding:.22rem 0}
nav li::before{flex:none;width:1.7em;margin:0}
}
`;

const narrow = `
@media screen and (max-width:36rem){
body{padding:0 1rem 4rem 1.5rem}
.skip:focus{left:1.5rem}
.facts>div{grid-template-columns:minmax(0,1fr) auto}
.facts .long{display:block}
.facts .remark,.facts .long .remark{grid-column:1/-1}
.opening .facts{grid-template-columns:1fr 1fr;gap:1rem 1.1rem}
.opening .facts .value{font-size:1.3rem}
th,td{padding-left:.6rem;padding-right:.6rem}
h2{margin-top:2.6rem}
}
@media (forced-colors:active){h2,header{border-bottom:1px dashed}}
`;

const print = `
@media print{
:root{color-scheme:light;--sv-paper:${printed.paper};--sv-cloth:${printed.cloth}}
html{font-size:9.6pt}
body{padding:0;font-size:9.6pt;line-height:1.42;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body::before,.skip,nav{display:none}
header{padding:0 0 1.1rem;max-width:none}
h1{font-size:20pt}
section,h2,.facts,p,ul,.notes,.caution,.sources,figcaption{max-width:none}
h2{margin-top:1.9rem;font-size:13pt}
h3{margin-top:1.3rem;font-size:10.6pt}
h2,h3,caption,.caution .title{break-after:avoid}
p,li{orphans:3;widows:3}
figure,.caution,.table:not(.long),tr,.facts>div,.notes li,.sources li{break-inside:avoid}
.table,.canvas{overflow:visible}
.canvas svg{max-height:230mm;min-width:0!important}
thead{display:table-header-group}
table{font-size:8.8pt}
th,td{padding:.22rem .55rem}
.broad .number,tbody .short{white-space:normal;overflow-wrap:normal}
tbody td:not(.number,.short),tbody th:not(.number,.short),.words{min-width:0}
.broad table{font-size:7.2pt}
.broad th,.broad td{padding:.2rem .22rem}
.broadest table{font-size:6.5pt}
.broadest th,.broadest td{padding:.2rem .14rem}
.opening .facts{grid-template-columns:repeat(4,1fr)}
a{color:inherit;text-decoration:none}
a[href^="http"]::after{content:" (" attr(href) ")"}
}
`;

/** A text as a CSS string: everything but letters, digits and spaces is escaped by its code, so that no text ends the style. */
function cssString(text: string): string {
  const escaped = [...text].map((character) =>
    /[A-Za-z0-9 ]/.test(character) ? character : `\\${(character.codePointAt(0) ?? 0).toString(16)} `,
  );
  return `"${escaped.join('')}"`;
}

/** A4 with the title running along the top from the second sheet on, and sheet numbers. */
function sheet(title: string): string {
  const small = `font:7.6pt system-ui,sans-serif;color:${palette.muted.light}`;
  return `
@page{size:A4;margin:19mm 17mm 18mm 19mm;
@top-left{content:${cssString(title)};${small}}
@bottom-right{content:counter(page) " / " counter(pages);${small}}}
@page :first{@top-left{content:none}}
`;
}

/** The whole style of a report page; `title` runs along the top of printed sheets. */
export function pageStyle(title: string): string {
  return screen + wide + narrow + print + sheet(title);
}
