/**
 * Style of the sheet. Everything is in rem: 62.5 % on screen makes 1rem 10 px, 50 % in print is the scale 0.8 of
 * the look, and a figure drawn 682 px wide for paper stands on screen 1.25 times as large, type in step with the text.
 */
const words = 'Charter,"Bitstream Charter","Charis SIL","Sitka Text",Cambria,Georgia,serif';
const numbers = 'system-ui,"Segoe UI",Roboto,"Noto Sans","Open Sans",sans-serif';
const math = '"Cambria Math","STIX Two Math","Latin Modern Math","DejaVu Math TeX Gyre","Noto Sans Math",math';

const type = `
:root{color-scheme:only light;font-size:62.5%}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#171c20;font:1.7rem/2.4rem ${words};font-variant-numeric:tabular-nums lining-nums;overflow-wrap:break-word}
.sheet{max-width:88.45rem;margin:0 auto;padding:1.6rem}
h1{font-size:3.2rem;line-height:4rem;margin:0;font-weight:600;text-wrap:balance}
h2{font-size:2rem;line-height:2.4rem;margin:0 0 .8rem;font-weight:600}
p{margin:0 0 .8rem}
.n{font-family:${numbers};font-size:.94em;white-space:nowrap}
h1 .n{font-weight:700}
a{text-decoration:underline dotted;text-underline-offset:.25em;text-decoration-thickness:1px;color:inherit}
a:focus-visible,summary:focus-visible,.scroll:focus-visible{outline:3px solid #171c20;outline-offset:3px}
.quiet,.source{font:1.3rem/2rem ${numbers};color:#4c565e}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.paper{display:none}
li:target{background:#f2f4f5}
`;

const top = `
.top{display:flex;flex-wrap:wrap;gap:0 2.4rem;align-items:center;justify-content:space-between;border-bottom:1px solid #171c20;padding-bottom:.8rem;margin-bottom:1rem}
.brand{display:flex;align-items:center;gap:1rem;font-size:2rem;font-weight:600}
.brand svg{width:3.4rem;height:2rem}
.running{font:1.5rem/2.4rem ${numbers}}
.asked{font-style:italic;font-size:2rem;color:#4c565e;margin:0}
.verdict{display:flex;gap:1.2rem;margin:.8rem 0}
.mark{font:600 1.5rem/2.4rem ${numbers};white-space:nowrap;flex:none}
.mark svg{width:3rem;height:1.2rem}
.next{margin:0 0 .8rem}
`;

const figures = `
figure{margin:1.6rem 0;break-inside:avoid}
figure.lead{margin:.8rem 0}
figcaption{font-size:2rem;line-height:2.6rem;font-weight:600;margin-bottom:.8rem;break-after:avoid}
figure svg{display:block;width:calc(var(--w)*.125rem);max-width:100%;height:auto}
.narrow{display:none}
details{font-family:${numbers};font-size:1.5rem;margin:0 0 1.6rem}
summary{padding:.5rem 0;line-height:2.2rem;cursor:pointer;color:#4c565e}
`;

const depth = `
section{border-top:1px solid #171c20;padding-top:1rem;margin-top:1.2rem}
ol.steps{list-style:none;counter-reset:step;margin:0;padding:0}
ol.steps>li{counter-increment:step;position:relative;padding-left:2.6rem;margin-bottom:1rem;break-inside:avoid}
ol.steps>li::before{content:counter(step);position:absolute;left:0;font:1.3rem/2.4rem ${numbers};color:#4c565e}
ol.steps p{margin:0}
.working{margin:.4rem 0;overflow-x:auto;overflow-y:hidden}
.piece{display:inline-block;max-width:100%;margin-right:.2rem;padding:.2rem 0}
.working math{display:inline math!important;font-family:${math};font-size:1.6rem}
.put math mn,.put math mtext{font-family:${numbers};font-size:.94em}
.put msub>:last-child,.put msubsup>:nth-child(2){font-family:${math}!important}
ul{margin:0;padding-left:2.2rem}
li{margin-bottom:.4rem;break-inside:avoid}
dl{margin:0 0 .8rem;font:1.5rem/2rem ${numbers}}
dl div{display:flex;flex-wrap:wrap;gap:0 1.2rem;padding:.3rem 0;border-bottom:1px solid #d3d8dc;break-inside:avoid}
dt{min-width:7.8rem;color:#4c565e}
dd{margin:0}
dd.from{color:#4c565e;margin-left:auto}
.stacked dt{min-width:0}
.stacked .from{flex-basis:100%;margin:0;font-size:1.3rem;line-height:1.8rem}
`;

const tables = `
.scroll{overflow-x:auto}
table{border-collapse:collapse;font:1.5rem/2rem ${numbers};min-width:50%}
caption{text-align:left;color:#4c565e;padding-bottom:.4rem}
th,td{padding:.3rem 2.8rem .3rem 0;border-bottom:1px solid #d3d8dc;text-align:left;font-weight:400;vertical-align:top}
th:last-child,td:last-child{padding-right:0}
thead th{font-weight:600;border-bottom-color:#7b858d;vertical-align:bottom}
.r{text-align:right;white-space:nowrap}
thead .r{white-space:normal}
tr,.whole{break-inside:avoid}
.file{font:1.5rem/2.2rem ${numbers};white-space:pre-wrap;overflow-wrap:anywhere;margin:0;tab-size:2}
.line{display:block;padding-left:2.4rem;text-indent:-2.4rem;break-inside:avoid;unicode-bidi:isolate}
.opens{break-after:avoid}
.file b{font-weight:600}
.foot{display:flex;flex-wrap:wrap;gap:0 2.4rem;justify-content:space-between;border-top:1px solid #d3d8dc;margin-top:1.2rem;padding-top:.6rem;font:1.3rem/1.8rem ${numbers};color:#4c565e}
.foot p{margin:0;max-width:100%}
`;

const media = `
@media (min-width:700px),print{
.columns{display:grid;grid-template-columns:388fr 266fr;gap:0 3.5rem}
.columns>div{min-width:0}
.file{columns:2;column-gap:2.4rem}
}
@media screen and (max-width:599px){
h1{font-size:2.6rem;line-height:3.2rem}
.verdict{display:block}
.mark{margin-right:.8rem}
th,td{padding-right:1.2rem}
.has-narrow .wide{display:none}
.narrow{display:block}
.narrow svg{width:calc(var(--v)*1px)}
.figure-box{overflow-x:auto}
.only-wide svg{width:56rem;max-width:none}
figure.lead.has-narrow{margin-inline:-1.6rem}
}
@media print{
@page{margin:10mm 15mm}
:root{font-size:50%}
body{print-color-adjust:exact;-webkit-print-color-adjust:exact}
body{line-height:2.15rem}
main{display:flex;flex-direction:column}
main:not(:has(>figure~figure~figure))>.tall{order:1}
.sheet{max-width:none;padding:0}
p,.verdict{margin-bottom:.6rem}
figure,figure.lead{margin:.6rem 0}
li,ol.steps>li{margin-bottom:.3rem}
.working{margin:.1rem 0}
.piece{padding:0 0 .1rem}
ol.steps>li::before{line-height:2.15rem}
section{margin-top:1rem;padding-top:.8rem}
h2{margin-bottom:.5rem}
.source,li .quiet{line-height:1.7rem}
.file{line-height:1.9rem}
dl{font-size:1.3rem;line-height:1.7rem}
dl div{display:block;border:0}
dl dt,dl dd,.stacked .from{display:inline;margin:0}
dt::after{content:": "}
dd.from::before{content:" · "}
dl div,th,td{padding-top:.2rem;padding-bottom:.2rem}
details{display:none}
.paper{display:block}
a{text-decoration:none}
h2{break-after:avoid}
section{break-inside:auto}
p{orphans:3;widows:3}
.scroll,.working{overflow:visible}
.top{padding-bottom:.6rem}
}
`;

/** The whole style sheet; no url, no import, no font to fetch. */
export const sheetStyle: string = [type, top, figures, depth, tables, media].join("").replaceAll(/\n+/g, "\n").trim();
