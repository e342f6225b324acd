/** Type, paper and print of the pages. One style sheet, in the page itself. */
export const pageStyle = `
:root{color-scheme:light;--ink:#23271f;--soft:#565b4e;--rule:#cfc9b8;--pen:#8a2f4a;--paper:#f6f3ea;--sheet:#fffdf8}
*{box-sizing:border-box;margin:0}
html{background:var(--paper);color:var(--ink);font:16px/1.42 Seravek,"Gill Sans Nova",Ubuntu,Calibri,"Open Sans","Noto Sans","DejaVu Sans",sans-serif;font-variant-numeric:tabular-nums;-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{max-width:50rem;margin:0 auto;padding:1.2rem 1rem 2.5rem}
h1,h2,.big{font-family:"Iowan Old Style","Palatino Linotype",Palatino,P052,"Book Antiqua",Georgia,"DejaVu Serif",serif;font-weight:600;line-height:1.16;text-wrap:balance}
h1{font-size:1.9rem;letter-spacing:-.01em}
h2{font-size:1.15rem;margin:0 0 .3rem}
p+p,ul+p,p+ul{margin-top:.4rem}
ul{padding:0;list-style:none}
.said li{padding-left:1rem;position:relative}
.said li+li{margin-top:.28rem}
.said li::before{content:"";position:absolute;left:.1rem;top:.62em;width:.42rem;border-top:2px solid var(--pen)}
.leaf{display:grid;grid-template-columns:minmax(0,1fr);gap:1rem;align-content:start}
.leaf+.leaf{margin-top:1.6rem}
.top{display:flex;justify-content:space-between;align-items:baseline;gap:1rem;border-bottom:1.5px solid var(--ink);padding-bottom:.35rem}
.top p{margin:0;font-size:.9rem;color:var(--soft);overflow-wrap:anywhere}
.top .what{color:var(--ink);font-weight:600}
.stamp{border:1.5px solid var(--pen);color:var(--pen);border-radius:3px;padding:.05rem .45rem;font-size:.8rem;font-weight:600;white-space:nowrap;transform:rotate(-1.5deg)}
.odds{display:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:.3rem 1.6rem;align-items:center}
.odds .tens{width:100%}
.odds .big{font-size:1.8rem}
.odds .under{color:var(--soft)}
.odds .think{grid-column:1/-1}
.plan>svg{display:block;width:100%;height:auto}
.key{display:flex;flex-wrap:wrap;gap:.15rem 1rem;font-size:.8rem;color:var(--soft);margin-top:.4rem}
.key li{display:flex;align-items:center;gap:.35rem}
.key svg{width:28px;height:14px;flex:none}
.two{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:1rem 1.8rem}
.stack{display:grid;gap:.8rem;align-content:start}
.next{border-left:4px solid var(--pen);padding:.1rem 0 .1rem .8rem;font-weight:600}
.wait{display:grid;grid-template-columns:minmax(0,2.3fr) minmax(0,1fr);gap:1rem;align-items:center}
.wait svg{width:100%;height:auto;display:block}
table{border-collapse:collapse;width:100%;font-size:.93rem}
th,td{text-align:left;vertical-align:top;padding:.3rem .7rem .3rem 0;border-bottom:1px solid var(--rule);overflow-wrap:anywhere}
thead th{overflow-wrap:normal;border-bottom:1.5px solid var(--ink);font-weight:600;font-size:.84rem;color:var(--soft)}
tbody th{font-weight:600}
td.keep{white-space:nowrap}
td.n,th.n{text-align:right;white-space:nowrap}
tr.best th,tr.best td{background:#f3e9e4}
tr.best th:first-child{box-shadow:inset 4px 0 var(--pen);padding-left:.7rem}
.tag{display:inline-block;border:1.5px solid var(--pen);border-radius:3px;color:var(--pen);font-size:.74rem;padding:0 .3rem;font-weight:600}
.fine{font-size:.84rem;color:var(--soft)}
.photos{display:grid;grid-template-columns:repeat(3,1fr);gap:.8rem}
.photos img{width:100%;height:8.5rem;object-fit:cover;border:1px solid var(--ink);display:block}
.photos figcaption{font-size:.82rem;color:var(--soft);margin-top:.2rem}
.rule{font-weight:700;margin-top:.5rem}
.small ul{columns:2;column-gap:1.8rem}
.small li{break-inside:avoid}
.two .small ul{columns:1}
th .fine{font-weight:400}
.sign{border-top:1.5px solid var(--ink);padding-top:.4rem;display:flex;flex-wrap:wrap;gap:.2rem 1.2rem;justify-content:space-between;font-size:.88rem}
.sign .who{overflow-wrap:anywhere}
.blank{display:inline-block;min-width:11rem;border-bottom:1px solid var(--ink)}
.facts th{width:45%;font-weight:400;color:var(--soft)}
.facts td{font-weight:600}
.checks li{position:relative;padding-left:1.6rem}
.checks li+li{margin-top:.3rem}
.box{position:absolute;left:0;top:.18em;width:.95em;height:.95em;border:1.5px solid var(--ink);border-radius:2px}
.amounts{columns:2;column-gap:1.8rem;font-size:.88rem}
.amounts li{display:flex;justify-content:space-between;gap:.6rem;border-bottom:1px solid var(--rule);padding:.12rem 0;break-inside:avoid}
.amounts b{white-space:nowrap;font-weight:600}
.fill{display:flex;flex-wrap:wrap;gap:.6rem 1.2rem;margin-top:.7rem}
.fill span{flex:1 1 8rem;border-bottom:1px solid var(--ink);padding-bottom:1.1rem;font-size:.84rem;color:var(--soft)}
@media screen{.leaf{background:var(--sheet);padding:1.6rem 1.7rem;box-shadow:0 1px 8px rgb(60 50 20/14%)}}
@media screen and (max-width:40rem){body{padding:.5rem}.leaf{padding:1rem}h1{font-size:1.5rem}.odds,.two,.wait{grid-template-columns:minmax(0,1fr)}.small ul{columns:1}.photos{grid-template-columns:1fr}.top{flex-direction:column;gap:.2rem}.wide table,.wide tbody,.wide tr,.wide th,.wide td{display:block}.wide thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.wide tr{border-bottom:1.5px solid var(--rule);padding:.4rem 0}.wide th,.wide td{border:0;padding:.1rem 0}.wide td{display:flex;justify-content:space-between;gap:1rem;text-align:right;white-space:normal}.wide td::before{content:attr(data-name);color:var(--soft);text-align:left}}
@media print{
@page{margin:11mm 14mm}
html{background:none;font-size:10pt;line-height:1.34}
body{max-width:none;padding:.6mm .6mm 0}
.leaf{gap:3.6mm}
.leaf+.leaf{margin-top:0;break-before:page}
h1{font-size:20pt}
h2{font-size:12pt}
section,figure,tr,li{break-inside:avoid}
.leaf{break-inside:auto}
.photos img{height:25mm}
.small ul,.small .rule{font-size:9pt;line-height:1.3}
.small li+li{margin-top:.6mm}
table{font-size:9.4pt}th,td{padding-top:1mm;padding-bottom:1mm}
}
`;
