/** Two threads on cloth: indigo and madder, each darkest on paper and lightest at night. Text keeps a contrast of 4.5 or more. */
const light = `
--sv-paper:#fcfcfa;--sv-cloth:#f2f2ed;--sv-ink:#1c2230;--sv-muted:#59606d;--sv-hair:#d3d6dc;--sv-cool:#2f4486;--sv-warm:#a23a2c;`;

const dark = `
--sv-paper:#14171e;--sv-cloth:#1d222c;--sv-ink:#e2e4e9;--sv-muted:#a3aab7;--sv-hair:#363d4a;--sv-cool:#a0b3f0;--sv-warm:#e8907f;`;

/** A line of running stitch, `long` on the face and `short` below it. */
const stitch = (colour: string, direction: '90deg' | '180deg', long = 9, short = 6): string =>
  `repeating-linear-gradient(${direction},var(${colour}) 0 ${long}px,transparent ${long}px ${long + short}px)`;

const screen = `
:root{color-scheme:light dark;${light}}
@media screen and (prefers-color-scheme:dark){:root{${dark}}}
*{box-sizing:border-box}
html{scroll-padding-top:1.5rem;-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;padding:0 1.15rem 4rem 1.9rem;background:var(--sv-paper);color:var(--sv-ink);
font:1rem/1.55 system-ui,sans-serif;font-variant-numeric:tabular-nums;overflow-wrap:break-word;counter-reset:section}
body::before{content:"";position:fixed;inset:0 auto 0 0;width:.8rem;border-right:1px solid var(--sv-hair);
background:${stitch('--sv-warm', '180deg')} center/2px 100% no-repeat,var(--sv-cloth)}
a{color:var(--sv-cool);text-decoration-thickness:1px;text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:2px solid var(--sv-cool);outline-offset:3px}
main:focus{outline:none}
.skip{position:absolute;left:-100vw;z-index:1;padding:.5rem 1rem;background:var(--sv-paper);border:1px solid var(--sv-cool)}
.skip:focus{left:1.9rem;top:.5rem}
header{padding:2.4rem 0 1.5rem;max-width:62rem;
background:${stitch('--sv-warm', '90deg')} 0 calc(100% - 5px)/100% 2px no-repeat,${stitch('--sv-cool', '90deg')} 7px 100%/100% 2px no-repeat}
h1{margin:0;font-size:clamp(1.65rem,1.2rem + 2.1vw,2.5rem);font-weight:650;line-height:1.15;letter-spacing:-.015em;text-wrap:balance}
.subtitle{margin:.55rem 0 0;color:var(--sv-muted);font-size:1.05rem;max-width:44rem;text-wrap:pretty}
nav{margin:1.4rem 0 0;font-size:.9rem;color:var(--sv-muted)}
nav ol{margin:0;padding:0;list-style:none;counter-reset:entry;display:flex;flex-wrap:wrap;gap:.3rem 1.3rem}
nav li{counter-increment:entry}
nav li::before{content:counter(entry) / "";margin-right:.5em;color:var(--sv-cool)}
nav a{color:inherit;text-decoration:none}
nav a:hover{color:var(--sv-ink);text-decoration:underline}
section{max-width:62rem;margin:0}
h2,.facts{max-width:46rem}
h2{counter-increment:section;margin:3.2rem 0 1.2rem;padding-bottom:.55rem;font-size:1.4rem;font-weight:650;line-height:1.25;letter-spacing:-.008em;
background:${stitch('--sv-warm', '90deg')} 0 100%/100% 2px no-repeat}
h2::before{content:counter(section) / "";margin-right:.7em;color:var(--sv-cool);font-weight:400}
h3{margin:2.2rem 0 .7rem;font-size:1.08rem;font-weight:650;line-height:1.3}
p{margin:0 0 1rem;max-width:40rem;text-wrap:pretty}
ul{margin:0 0 1rem;padding-left:1.2rem;max-width:40rem}
li{margin:.25rem 0}
li::marker{color:var(--sv-warm)}
.unit{color:var(--sv-muted);font-weight:400;white-space:nowrap}
.facts{margin:1.1rem 0 1.6rem;border-top:1px solid var(--sv-hair)}
.facts>div{display:grid;grid-template-columns:minmax(0,16rem) minmax(0,9rem) minmax(0,1fr);gap:0 1.2rem;align-items:baseline;padding:.38rem 0;border-bottom:1px solid var(--sv-hair)}
.facts dd{margin:0;min-width:0;overflow-wrap:anywhere}
.facts dt,.facts .remark{color:var(--sv-muted)}
.facts .remark{font-size:.9rem}
.facts .value{font-weight:600}
.facts .value .unit{font-weight:400}
.facts .long .value{grid-column:2/-1;font-weight:400}
.facts .long .remark{grid-column:2/-1}
.opening>:first-child{margin-top:2rem}
.opening .facts{max-width:none;display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,11.5rem),1fr));border:0;gap:1.3rem 1.6rem}
.opening .facts>div{display:block;padding:.55rem 0 0;border:0;border-top:1px solid var(--sv-ink)}
.opening .facts dt{font-size:.9rem}
.opening .facts .value{font-size:1.55rem;line-height:1.25;font-weight:600;letter-spacing:-.01em}
.opening .facts .value .unit{font-size:1rem;letter-spacing:0}
.table{margin:1.5rem 0 1.9rem;overflow-x:auto}
table{border-collapse:collapse;font-size:.94rem;line-height:1.4}
caption,figcaption{padding:0 0 .6rem;text-align:left;font-size:.94rem;color:var(--sv-muted);text-wrap:pretty}
caption>span{display:inline-block;position:sticky;left:0;max-width:min(46rem,100vw - 3.2rem)}
.mark{margin-right:.45em;color:var(--sv-cool);font-weight:600;white-space:nowrap}
th,td{padding:.34rem .95rem;text-align:left;vertical-align:baseline;font-weight:400}
td,tbody th{overflow-wrap:anywhere}
th:first-child,td:first-child{padding-left:.1rem}
th:last-child,td:last-child{padding-right:.1rem}
thead th{vertical-align:bottom;font-weight:600;padding-bottom:.45rem;border-bottom:1.5px solid var(--sv-ink);line-height:1.25}
thead .unit{display:block;font-size:.88em;margin-top:.1rem}
tbody th,tbody td{border-bottom:1px solid var(--sv-hair)}
tbody tr:last-child>*{border-bottom-color:var(--sv-ink)}
tbody tr:hover>*{background:var(--sv-cloth)}
.number{text-align:right;white-space:nowrap}
tbody .short{white-space:nowrap}
tbody td:not(.number,.short),tbody th:not(.number,.short){min-width:11rem}
thead .number{white-space:normal}
.pad{visibility:hidden;user-select:none}
figure{margin:1.7rem 0 2.1rem}
.canvas{overflow-x:auto;padding-bottom:.3rem}
figcaption{padding:.7rem 0 0;max-width:40rem}
.notes{margin:1.2rem 0 1.6rem;max-width:42rem;font-size:.94rem}
.notes ul{margin:0;padding:0;list-style:none;max-width:none}
.notes li{margin:.55rem 0;padding:.1rem 0 .1rem 1.05rem;background:${stitch('--sv-cool', '180deg', 6, 4)} 0 0/2px 100% no-repeat}
.notes .warning{background-image:${stitch('--sv-warm', '180deg', 6, 4)}}
.notes strong{margin-right:.25em;color:var(--sv-cool);font-weight:600}
.notes .warning strong{color:var(--sv-warm)}
.source{color:var(--sv-muted);white-space:nowrap}
.caution{margin:1.8rem 0;padding:1rem 1.2rem .9rem;max-width:44rem;background:var(--sv-cloth);outline:1px dashed var(--sv-warm);outline-offset:-5px}
.caution .title{margin:0 0 .5rem;font-weight:650;color:var(--sv-warm)}
.caution ul{margin:0}
.sources{padding:0;list-style:none;font-size:.94rem;max-width:44rem}
.sources li{margin:.6rem 0;padding-left:1.2rem;text-indent:-1.2rem}
.sources .key{font-weight:600;margin-right:.3em}
.sources .access{color:var(--sv-muted);white-space:nowrap}
.sources .access::before{content:"("}
.sources .access::after{content:")"}
:target{scroll-margin-top:1.5rem}
.sources :target{background:var(--sv-cloth)}
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
:root{color-scheme:light;--sv-paper:#fff;--sv-cloth:#f4f4f0}
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
figure,.caution,tr,.facts>div,.notes li,.sources li{break-inside:avoid}
.table,.canvas{overflow:visible}
.canvas svg{max-height:150mm;min-width:0!important}
thead{display:table-header-group}
table{font-size:8.8pt}
th,td{padding:.22rem .7rem}
.opening .facts{grid-template-columns:repeat(4,1fr)}
a{color:inherit;text-decoration:none}
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
  const small = 'font:7.6pt system-ui,sans-serif;color:#59606d';
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
