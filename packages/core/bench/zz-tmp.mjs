// ../../tmp/s1/p.mts
import { readFileSync } from "node:fs";

// packages/core/src/problem/nearest.ts
import { distance } from "fastest-levenshtein";
function spellingDistance(a, b) {
  const d = distance(a, b);
  return d === 2 && [...a].sort().join("") === [...b].sort().join("") ? 1 : d;
}
var plain = (word) => word.toLowerCase().replace(/[-_\s]/g, "") || word;
function nearest(word, known) {
  let best;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const d = spellingDistance(plain(word), plain(candidate));
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  const limit5 = Math.max(1, Math.ceil(word.length / 3));
  return bestDistance <= limit5 ? best : void 0;
}
function nearestHint(word, known) {
  const found = nearest(word, known);
  return found === void 0 ? {} : { hint: `did you mean \`${found}\`?` };
}

// packages/core/src/problem/problem.ts
var SelvageError = class extends Error {
  problems;
  constructor(problems) {
    super(problems.map((problem) => problem.message).join("; "));
    this.name = "SelvageError";
    this.problems = problems;
  }
};
function fail(problem) {
  throw new SelvageError([problem]);
}

// packages/core/src/problem/choice.ts
function choice(what, value, choices) {
  const found = choices.find((one) => one === value);
  if (found !== void 0) return found;
  return fail({
    code: "not-a-choice",
    message: value === void 0 ? `${what} is not given` : `${what} is \`${value}\``,
    allowed: choices.join(", "),
    ...value === void 0 ? {} : nearestHint(value, choices)
  });
}

// packages/core/src/design/source.ts
import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit
} from "yaml";
function parseSource(text3) {
  const lines = new LineCounter();
  const document = parseDocument(text3, {
    lineCounter: lines,
    version: "1.2",
    prettyErrors: false,
    uniqueKeys: true,
    strict: true
  });
  return { document, lines, text: text3 };
}
function placeAt({ lines, text: text3 }, start, end2) {
  const { line, col } = lines.linePos(Math.min(start, text3.length));
  const from = lines.lineStarts[line - 1] ?? 0;
  const next = lines.lineStarts[line] ?? text3.length + 1;
  const excerpt = text3.slice(from, next - 1).replace(/\r$/, "");
  const length2 = Math.max(1, Math.min(end2, from + excerpt.length) - start);
  return { line, column: col, length: length2, excerpt };
}
var rangeOf = (node) => {
  const range = node?.range;
  return range === void 0 || range === null ? void 0 : [range[0], Math.max(range[1], range[0] + 1)];
};
function step(node, part, document) {
  const target = isAlias(node) ? node.resolve(document) : node;
  if (isMap(target)) {
    const pair2 = target.items.find((item) => isScalar(item.key) && String(item.key.value) === String(part));
    return pair2 === void 0 ? void 0 : { key: pair2.key, value: pair2.value };
  }
  if (isSeq(target)) {
    const item = target.items[Number(part)];
    return item === void 0 ? void 0 : { value: isPair(item) ? item.value : item };
  }
  return void 0;
}
var quote = (node) => isScalar(node) && (node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE") ? 1 : 0;
function placeOf(source, path, options = {}) {
  let found = { value: source.document.contents };
  let complete = true;
  for (const part of path) {
    const next = step(found.value, part, source.document);
    if (next === void 0) {
      complete = false;
      break;
    }
    found = next;
  }
  const atKey = (options.atKey === true || !complete) && found.key !== void 0;
  const range = rangeOf(atKey ? found.key : found.value) ?? rangeOf(found.key);
  if (range === void 0) return void 0;
  if (atKey || options.within === void 0 || !complete)
    return placeAt(source, range[0], complete || atKey ? range[1] : range[0] + 1);
  const start = range[0] + quote(found.value) + options.within.offset;
  return placeAt(source, start, start + options.within.length);
}
function locate(problems, source) {
  const located2 = problems.map((problem) => {
    if (problem.where !== void 0 || problem.path === void 0) return problem;
    const where = placeOf(source, problem.path, {
      ...problem.atKey === void 0 ? {} : { atKey: problem.atKey },
      ...problem.within === void 0 ? {} : { within: problem.within }
    });
    const also = problem.also?.map((other) => {
      const place = other.where ?? (other.path === void 0 ? void 0 : placeOf(source, other.path));
      return place === void 0 ? other : { ...other, where: place };
    });
    return { ...problem, ...where === void 0 ? {} : { where }, ...also === void 0 ? {} : { also } };
  });
  const seen = /* @__PURE__ */ new Set();
  const once = located2.filter(({ message, where }) => {
    const key = `${where?.line}:${where?.column} ${message}`;
    return !seen.has(key) && seen.add(key);
  });
  const order = (place) => place === void 0 ? -1 : place.line * 1e5 + place.column;
  return once.sort((a, b) => order(a.where) - order(b.where));
}
var quotedCode = 'an orientation code needs quotes: stack: "[0/90]s"';
function syntaxProblems(source) {
  const problems = source.document.errors.map((error) => syntaxProblem(error, source));
  const tabs = problems.filter((problem) => problem.code === "tab");
  if (tabs.length > 0) return tabs;
  const first2 = source.document.errors.findIndex((error) => layoutErrors.has(error.code));
  const worth = problems.filter((_, i) => i === first2 || !layoutErrors.has(source.document.errors[i]?.code ?? ""));
  return [...worth, ...forbiddenKeys(source)];
}
var layoutErrors = /* @__PURE__ */ new Set(["BLOCK_AS_IMPLICIT_KEY", "MULTILINE_IMPLICIT_KEY", "BAD_INDENT"]);
var layoutAllowed = "keys of one level begin in one column, and a space follows each colon";
function layoutProblem(code, start, where, source) {
  const tight = /^([A-Za-z_][\w-]*):(?=[^\s/])/.exec(source.text.slice(start));
  if (tight !== null) {
    return {
      code: "syntax",
      message: `a space is missing behind the colon of \`${tight[1]}\``,
      allowed: layoutAllowed,
      where: placeAt(source, start, start + tight[0].length)
    };
  }
  const end2 = source.text.indexOf("\n", start);
  const below = /\S/.exec(source.text.slice(end2 < 0 ? source.text.length : end2));
  const at4 = code === "BLOCK_AS_IMPLICIT_KEY" && below !== null ? end2 + below.index : start;
  return {
    code: "syntax",
    message: "this line does not stand in the column of its neighbours: it is deeper than a line above that already holds a value",
    allowed: layoutAllowed,
    where: at4 === start ? where : placeAt(source, at4, at4 + 1)
  };
}
function forbiddenKeys(source) {
  const problems = [];
  visit(source.document, {
    Pair: (_, { key }) => {
      if (!isScalar(key) || key.value !== "__proto__") return;
      const [start, end2] = rangeOf(key) ?? [0, 1];
      problems.push({
        code: "unknown-key",
        message: "`__proto__` cannot be a key",
        where: placeAt(source, start, end2)
      });
    }
  });
  return problems;
}
function syntaxProblem(error, source) {
  const [start, end2] = error.pos;
  const where = placeAt(source, start, Math.max(end2, start + 1));
  if (error.code === "DUPLICATE_KEY") return duplicateKey(source, start, where);
  if (error.code === "TAB_AS_INDENT") {
    return {
      code: "tab",
      message: "a tab is used for indentation",
      allowed: "spaces",
      hint: "replace the tab by spaces",
      where
    };
  }
  if (error.code === "MULTIPLE_DOCS") {
    return {
      code: "several-documents",
      message: "the file holds more than one document",
      allowed: "one document; no second `---`",
      where
    };
  }
  if (layoutErrors.has(error.code)) return layoutProblem(error.code, start, where, source);
  const quote2 = /^missing closing (["'])/i.exec(error.message)?.[1];
  if (quote2 !== void 0) {
    const opening2 = Math.max(0, source.text.lastIndexOf(quote2, start - 1));
    return {
      code: "syntax",
      message: "a quotation mark is not closed",
      allowed: `a closing ${quote2}`,
      where: placeAt(source, opening2, opening2 + 1)
    };
  }
  const looksLikeCode = /\][0-9_]*[sStT]|\[[^\]]*[±~/]/.test(where.excerpt);
  const hint = looksLikeCode ? quotedCode : void 0;
  return {
    code: "syntax",
    message: `not valid YAML: ${plain2(error.message)}`,
    where,
    ...hint === void 0 ? {} : { hint }
  };
}
var plain2 = (message) => message.charAt(0).toLowerCase() + message.slice(1).replace(/\.$/, "").split("\n")[0];
function duplicateKey(source, offset, where) {
  const key = /^["']?([^"':\s]+)/.exec(source.text.slice(offset))?.[1] ?? "";
  const first2 = firstKey(source.document.contents, key, offset);
  return {
    code: "duplicate-key",
    message: `key \`${key}\` is given twice`,
    allowed: "each key once",
    where: { ...where, length: key.length },
    ...first2 === void 0 ? {} : { also: [{ label: "first given here", where: placeAt(source, first2, first2 + key.length) }] }
  };
}
function firstKey(node, key, offset) {
  if (isMap(node)) {
    const here = node.items.some((item) => rangeOf(item.key)?.[0] === offset);
    if (here) return rangeOf(node.items.find((item) => isScalar(item.key) && String(item.key.value) === key)?.key)?.[0];
    return firstOf(
      node.items.map((item) => item.value),
      key,
      offset
    );
  }
  return isSeq(node) ? firstOf(node.items, key, offset) : void 0;
}
function firstOf(nodes, key, offset) {
  for (const node of nodes) {
    const found = firstKey(node, key, offset);
    if (found !== void 0) return found;
  }
  return void 0;
}

// packages/core/src/design/assemble/context.ts
var newContext = (design) => ({ design, problems: [], used: /* @__PURE__ */ new Map() });
function own(record4, name) {
  return record4 !== void 0 && Object.hasOwn(record4, name) ? record4[name] : void 0;
}
function unknownName(what, name, known, path, within4) {
  return {
    code: "unknown-name",
    message: `there is no ${what} \`${name}\``,
    allowed: `${what} names of this file and of the library: ${known.length === 0 ? "none" : listed(known)}`,
    ...nearestHint(name, known),
    path,
    ...within4 === void 0 ? {} : { within: within4 }
  };
}
var mostListed = 12;
var listed = (names4) => names4.length <= mostListed ? names4.join(", ") : `${names4.slice(0, mostListed).join(", ")} and ${names4.length - mostListed} more`;
function keyPath(message, entry2) {
  const [, key = "", row] = /^(\w+)(?: of row (\d+))? = /.exec(message) ?? [];
  const rows = Object.hasOwn(entry2, "rows") ? entry2.rows : void 0;
  const held3 = Array.isArray(rows) && row !== void 0 ? rows[Number(row) - 1] : void 0;
  if (typeof held3 === "object" && held3 !== null && Object.hasOwn(held3, key)) return ["rows", Number(row) - 1, key];
  return key !== "" && Object.hasOwn(entry2, key) ? [key] : [];
}
function placed(path, compute2, entry2 = {}) {
  try {
    return compute2();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.map((problem) => ({ path: [...path, ...keyPath(problem.message, entry2)], ...problem }))
    );
  }
}
function attempt(context, path, compute2, entry2 = {}) {
  try {
    return placed(path, compute2, entry2);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    context.problems.push(...error.problems);
    return void 0;
  }
}
function use(context, provenance2) {
  const key = `${provenance2.kind} ${provenance2.name}`;
  if (!context.used.has(key)) context.used.set(key, provenance2);
}

// packages/core/src/laminate/shape-kind.ts
var negligible = 0.1;
function principalCurvatures([kx, ky, kxy]) {
  const mean3 = (kx + ky) / 2;
  const radius = Math.hypot((kx - ky) / 2, kxy / 2);
  const positive3 = mean3 >= -1e-9 * radius;
  const upper = radius === 0 ? 0 : Math.atan2(kxy, kx - ky) * 90 / Math.PI;
  const principal = positive3 ? [mean3 + radius, mean3 - radius] : [mean3 - radius, mean3 + radius];
  const turned = positive3 ? upper : upper + 90;
  return { principal, direction: turned > 90 ? turned - 180 : turned <= -90 ? turned + 180 : turned };
}
function kindOfShape(curvature, thickness) {
  const [kx, ky, kxy] = curvature;
  const [k1, k2] = principalCurvatures(curvature).principal;
  if (Math.abs(k1) * thickness < 1e-9) return "flat";
  if (Math.abs(k2) <= negligible * Math.abs(k1)) return "cylinder";
  if (k1 * k2 > 0) return "dome";
  return Math.max(Math.abs(kx), Math.abs(ky)) <= negligible * Math.abs(kxy) / 2 ? "twist" : "saddle";
}

// packages/core/src/laminate/cured-shape.ts
function curedShape({ curvature, notes: notes4, sources }, thickness) {
  const { principal, direction: direction2 } = principalCurvatures(curvature);
  const kind2 = kindOfShape(curvature, thickness);
  const rise2 = kind2 === "flat" ? {} : { riseOfThickness: Math.sqrt(8 * thickness / Math.abs(principal[0])) };
  return { kind: kind2, curvature, principal, direction: direction2, ...rise2, notes: notes4, sources };
}

// packages/core/src/material/check.ts
var shown = (value) => String(Number(value.toPrecision(6)));
var withUnit = (value, unit2) => unit2 === "" ? shown(value) : `${shown(value)} ${unit2}`;
function finite(quantity2, value) {
  if (Number.isFinite(value)) return void 0;
  return { code: "not-a-number", message: `${quantity2} = ${value} is not a finite number` };
}
function positive(quantity2, value, unit2, code = "out-of-range") {
  if (value > 0 && Number.isFinite(value)) return void 0;
  return finite(quantity2, value) ?? {
    code,
    message: `${quantity2} = ${withUnit(value, unit2)} must be more than 0`,
    allowed: "more than 0"
  };
}
function within(quantity2, value, low, high, unit2 = "", code = "out-of-range") {
  if (Number.isFinite(value) && value >= low && value <= high) return void 0;
  const allowed = high === Number.POSITIVE_INFINITY ? `${low} or more` : `${low} to ${withUnit(high, unit2)}`;
  return finite(quantity2, value) ?? {
    code,
    message: `${quantity2} = ${withUnit(value, unit2)} is outside ${allowed}`,
    allowed
  };
}
function between(quantity2, value, low, high, code = "out-of-range") {
  if (value > low && value < high) return void 0;
  return finite(quantity2, value) ?? {
    code,
    message: `${quantity2} = ${shown(value)} must lie between ${shown(low)} and ${shown(high)}, both excluded`,
    allowed: `more than ${shown(low)} and less than ${shown(high)}`
  };
}
function over(quantity2, value, low, high) {
  if (value > low && value <= high) return void 0;
  return finite(quantity2, value) ?? {
    code: "out-of-range",
    message: `${quantity2} = ${shown(value)} must be more than ${low} and at most ${high}`,
    allowed: `more than ${low}, at most ${high}`
  };
}
function demand(...checks2) {
  const problems = checks2.filter((check4) => check4 !== void 0);
  if (problems.length > 0) throw new SelvageError(problems);
}

// packages/core/src/material/admissibility.ts
function admissibility(constants3) {
  const { E1, E2, G12, nu12, G13, G23, nu23 } = constants3;
  const modulus = (name, value) => positive(name, value, "Pa", "not-admissible");
  const moduli = [
    modulus("E1", E1),
    modulus("E2", E2),
    modulus("G12", G12),
    G13 === void 0 ? void 0 : modulus("G13", G13),
    G23 === void 0 ? void 0 : modulus("G23", G23),
    finite("nu12", nu12)
  ].filter((problem) => problem !== void 0);
  if (moduli.length > 0) return moduli;
  const bound = Math.sqrt(E1 / E2);
  const inPlane2 = between("nu12", nu12, -bound, bound, "not-admissible");
  if (inPlane2 !== void 0) {
    return [
      { ...inPlane2, hint: "the bound is sqrt(E1/E2); nu12 is the contraction across the fibre per strain along it" }
    ];
  }
  if (nu23 === void 0) return [];
  const across2 = between("nu23", nu23, -1, 1 - 2 * nu12 * nu12 * E2 / E1, "not-admissible");
  return across2 === void 0 ? [] : [{ ...across2, hint: "the upper bound is 1 - 2 nu12^2 E2/E1" }];
}

// packages/core/src/material/fibre-content.ts
var fibreFractionLimits = { lowest: 0.1, highest: 0.75 };
function solidFibreThickness(arealMass3, fibreDensity) {
  demand(positive("areal mass", arealMass3, "kg/m^2"), positive("fibre density", fibreDensity, "kg/m^3"));
  return arealMass3 / fibreDensity;
}
function thicknessFromArealMass(arealMass3, fibreDensity, Vf) {
  demand(over("fibre volume fraction", Vf, 0, 1));
  return solidFibreThickness(arealMass3, fibreDensity) / Vf;
}
var demandDensities = ({ fibre: fibre2, resin: resin2, voidFraction = 0 }) => demand(
  positive("fibre density", fibre2, "kg/m^3"),
  positive("resin density", resin2, "kg/m^3"),
  within("void fraction", voidFraction, 0, 0.2)
);
function densityFromVolumeFraction(Vf, densities) {
  demandDensities(densities);
  const { fibre: fibre2, resin: resin2, voidFraction = 0 } = densities;
  demand(within("fibre volume fraction", Vf, 0, 1 - voidFraction));
  return fibre2 * Vf + resin2 * (1 - Vf - voidFraction);
}
function resinArealMass(thickness, Vf, densities) {
  demandDensities(densities);
  const { resin: resin2, voidFraction = 0 } = densities;
  demand(positive("thickness", thickness, "m"), within("fibre volume fraction", Vf, 0, 1 - voidFraction));
  return resin2 * (1 - Vf - voidFraction) * thickness;
}

// packages/core/src/material/closed-tool.ts
var mm = (metres) => `${shown(Number((metres * 1e3).toPrecision(3)))} mm`;
var usualFraction = 0.55;
function fibreVolumeFractionInGap({ fibreThickness: fibreThickness2, gap, fixedThickness = 0 }) {
  demand(
    positive("fibre thickness", fibreThickness2, "m"),
    positive("closed tool gap", gap, "m"),
    within("fixed thickness", fixedThickness, 0, Number.POSITIVE_INFINITY, "m")
  );
  const { lowest: lowest2, highest } = fibreFractionLimits;
  const hint = `a gap of ${mm(fixedThickness + fibreThickness2 / usualFraction)} would give ${usualFraction}`;
  if (fixedThickness >= gap) {
    fail({
      code: "not-computable",
      message: `closed tool gap ${mm(gap)} is filled by ${mm(fixedThickness)} of core and fixed plies`,
      allowed: `a gap of more than ${mm(fixedThickness)}`,
      hint
    });
  }
  const Vf = fibreThickness2 / (gap - fixedThickness);
  if (Vf < lowest2 || Vf > highest) {
    fail({
      code: "out-of-range",
      message: `closed tool gap ${mm(gap)} leaves fibre fraction ${Vf.toPrecision(2)}, allowed ${lowest2} to ${highest}`,
      allowed: `a gap of ${mm(fixedThickness + fibreThickness2 / highest)} to ${mm(fixedThickness + fibreThickness2 / lowest2)}`,
      hint
    });
  }
  return Vf;
}

// packages/core/src/material/cloth-yarns.ts
function clothOfYarns(yarns) {
  const { yarnCount, yarnLinearDensity, weftCount = yarnCount, weftLinearDensity = yarnLinearDensity } = yarns;
  demand(
    positive("yarnCount", yarnCount, "1/m"),
    positive("yarnLinearDensity", yarnLinearDensity, "kg/m"),
    positive("weftCount", weftCount, "1/m"),
    positive("weftLinearDensity", weftLinearDensity, "kg/m")
  );
  const warp2 = yarnCount * yarnLinearDensity;
  const arealMass3 = warp2 + weftCount * weftLinearDensity;
  return { arealMass: arealMass3, warpShare: warp2 / arealMass3 };
}

// packages/core/src/provenance/index.ts
function uniqueNotes(notes4) {
  const seen = /* @__PURE__ */ new Map();
  for (const note2 of notes4) if (!seen.has(note2.text)) seen.set(note2.text, note2);
  return [...seen.values()];
}
function uniqueSources(...lists) {
  const all = /* @__PURE__ */ new Set();
  for (const list of lists) for (const key of list) all.add(key);
  return [...all];
}

// packages/core/src/material/mixing-rules.ts
var demandPhases = (Pf, Pm, Vf) => demand(
  positive("fibre property", Pf, ""),
  positive("resin property", Pm, ""),
  within("fibre volume fraction", Vf, 0, 1)
);
function ruleOfMixtures(Pf, Pm, Vf) {
  demand(finite("fibre property", Pf), finite("resin property", Pm), within("fibre volume fraction", Vf, 0, 1));
  return Pf * Vf + Pm * (1 - Vf);
}
function inverseRule(Pf, Pm, Vf) {
  demandPhases(Pf, Pm, Vf);
  return 1 / (Vf / Pf + (1 - Vf) / Pm);
}
var halpinTsaiEta = (Pf, Pm, xi) => (Pf / Pm - 1) / (Pf / Pm + xi);
function halpinTsai(Pf, Pm, Vf, xi) {
  demandPhases(Pf, Pm, Vf);
  demand(within("xi", xi, 0, Number.POSITIVE_INFINITY));
  const eta = halpinTsaiEta(Pf, Pm, xi);
  return Pm * (1 + xi * eta * Vf) / (1 - eta * Vf);
}
function chamis(Pf, Pm, Vf) {
  demandPhases(Pf, Pm, Vf);
  return Pm / (1 - Math.sqrt(Vf) * (1 - Pm / Pf));
}

// packages/core/src/material/expansion.ts
function schapery(fibre2, resin2, Vf) {
  const E1 = ruleOfMixtures(fibre2.E1, resin2.E, Vf);
  const nu12 = ruleOfMixtures(fibre2.nu12, resin2.nu, Vf);
  const along2 = ruleOfMixtures(fibre2.E1 * fibre2.free1, resin2.E * resin2.free, Vf) / E1;
  const across2 = ruleOfMixtures(fibre2.free2 + fibre2.nu12 * fibre2.free1, (1 + resin2.nu) * resin2.free, Vf) - nu12 * along2;
  return { along: along2, across: across2 };
}
var acrossFibre = ({ E1, E2, alpha1, alpha2 }) => alpha2 ?? (E1 === E2 ? alpha1 : void 0);
function thermalExpansion(fibre2, resin2, Vf) {
  const free2 = acrossFibre(fibre2);
  if (fibre2.alpha1 === void 0 || free2 === void 0 || resin2.alpha === void 0) return void 0;
  const { along: along2, across: across2 } = schapery({ ...fibre2, free1: fibre2.alpha1, free2 }, { ...resin2, free: resin2.alpha }, Vf);
  return { alpha1: along2, alpha2: across2 };
}
function chamisExpansionAcross(fibre2, resin2, Vf) {
  const free2 = acrossFibre(fibre2);
  if (free2 === void 0 || resin2.alpha === void 0) return void 0;
  const root2 = Math.sqrt(Vf);
  const squeezed = 1 + Vf * resin2.nu * fibre2.E1 / ruleOfMixtures(fibre2.E1, resin2.E, Vf);
  return free2 * root2 + (1 - root2) * squeezed * resin2.alpha;
}
function moistureExpansion(fibre2, resin2, Vf, resinMassFraction) {
  if (resin2.beta === void 0) return void 0;
  const free = resin2.beta / resinMassFraction;
  const { along: along2, across: across2 } = schapery({ ...fibre2, free1: 0, free2: 0 }, { ...resin2, free }, Vf);
  return { beta1: along2, beta2: across2 };
}

// packages/core/src/material/transverse-isotropy.ts
function planeStrainBulkModulus(constants3) {
  const { E1, E2, nu12, nu23 } = constants3;
  return 1 / (2 * (1 - nu23) / E2 - 4 * nu12 * nu12 / E1);
}
function cylinderBulkModulus(Kf, Km, Gm, Vf) {
  return Km + Vf * (Kf - Km) * (Km + Gm) / (Km + Gm + (1 - Vf) * (Kf - Km));
}
function transverseConstants(ply3, K) {
  const nu23 = 1 - ply3.E2 / 2 * (1 / K + 4 * ply3.nu12 * ply3.nu12 / ply3.E1);
  return { nu23, G23: ply3.E2 / (2 * (1 + nu23)) };
}
var assumedFibreNu23 = 0.3;
var lacksNu23 = ({ nu23, E1, E2 }) => nu23 === void 0 && E1 !== E2;
function fibreNu23(fibre2) {
  return fibre2.nu23 ?? (lacksNu23(fibre2) ? assumedFibreNu23 : fibre2.nu12);
}
function transverseConstantsOf(fibre2, resin2, Vf, ply3) {
  const Kf = planeStrainBulkModulus({ ...fibre2, nu23: fibreNu23(fibre2) });
  if (!(Kf > 0 && Number.isFinite(Kf))) return void 0;
  const Km = planeStrainBulkModulus({ E1: resin2.E, E2: resin2.E, nu12: resin2.nu, nu23: resin2.nu });
  const Gm = resin2.E / (2 * (1 + resin2.nu));
  return transverseConstants(ply3, cylinderBulkModulus(Kf, Km, Gm, Vf));
}

// packages/core/src/material/micromechanics-models.ts
var comparedSources = {
  "rule-of-mixtures": "jones-1999",
  inverse: "jones-1999",
  "halpin-tsai": "halpin-kardos-1976",
  chamis: "chamis-1984",
  "transverse-isotropy": "hashin-1979",
  schapery: "schapery-1968"
};
function propertyModels({
  fibre: fibre2,
  resin: resin2,
  Vf,
  ply: ply3,
  model
}) {
  const Gm = resin2.E / (2 * (1 + resin2.nu));
  const G23f = fibre2.E2 / (2 * (1 + fibreNu23(fibre2)));
  const across2 = (Pf, Pm) => ({
    "rule-of-mixtures": ruleOfMixtures(Pf, Pm, Vf),
    inverse: inverseRule(Pf, Pm, Vf),
    chamis: chamis(Pf, Pm, Vf)
  });
  const mixed2 = (Pf, Pm, used, xi) => ({
    used,
    values: { ...across2(Pf, Pm), "halpin-tsai": halpinTsai(Pf, Pm, Vf, xi) },
    phases: [Pf, Pm],
    xi
  });
  const along2 = (Pf, Pm) => {
    const value = ruleOfMixtures(Pf, Pm, Vf);
    return { used: "rule-of-mixtures", values: { "rule-of-mixtures": value, chamis: value } };
  };
  const shear23 = across2(G23f, Gm);
  const { alpha1, alpha2 } = ply3.expansion ?? {};
  return {
    E1: { ...along2(fibre2.E1, resin2.E), phases: [fibre2.E1, resin2.E] },
    E2: mixed2(fibre2.E2, resin2.E, model.E2 ?? "halpin-tsai", model.xiE2 ?? 2),
    G12: mixed2(fibre2.G12, Gm, model.G12 ?? "halpin-tsai", model.xiG12 ?? 1),
    nu12: along2(fibre2.nu12, resin2.nu),
    nu23: {
      used: "transverse-isotropy",
      values: {
        "transverse-isotropy": ply3.nu23,
        chamis: chamis(fibre2.E2, resin2.E, Vf) / (2 * shear23.chamis) - 1
      }
    },
    G23: {
      used: "transverse-isotropy",
      values: { ...shear23, "transverse-isotropy": ply3.G23 },
      phases: [G23f, Gm]
    },
    alpha1: { used: "schapery", values: { schapery: alpha1, chamis: alpha1 } },
    alpha2: { used: "schapery", values: { schapery: alpha2, chamis: chamisExpansionAcross(fibre2, resin2, Vf) } }
  };
}

// packages/core/src/material/ply.ts
var strengthNames = ["Xt", "Xc", "Yt", "Yc", "S"];
function* faults(given) {
  yield positive("thickness", given.thickness, "m");
  yield finite("angle", given.angle ?? 0);
  yield* admissibility(given);
  if (given.E3 !== void 0) yield positive("E3", given.E3, "Pa", "not-admissible");
  if (given.shearStrength !== void 0) yield positive("shearStrength", given.shearStrength, "Pa");
  if (given.density !== void 0) yield positive("density", given.density, "kg/m^3");
  if (given.fibreVolumeFraction !== void 0) yield within("fibreVolumeFraction", given.fibreVolumeFraction, 0, 1);
  if (given.voidFraction !== void 0) yield within("voidFraction", given.voidFraction, 0, 1);
  for (const name of ["fibreArealMass", "resinArealMass"]) {
    const mass = given[name];
    if (mass !== void 0) yield within(name, mass, 0, Number.POSITIVE_INFINITY, "kg/m^2");
  }
  if (given.strengths !== void 0) {
    for (const name of strengthNames) yield positive(name, given.strengths[name], "Pa");
  }
  for (const [name, value] of Object.entries({ ...given.expansion, ...given.moistureExpansion })) {
    yield finite(name, value);
  }
}
function ply(properties) {
  demand(...faults(properties));
  const { name = "ply", angle: angle2 = 0, notes: notes4 = [], sources = [], ...rest } = properties;
  return { name, angle: angle2, ...rest, notes: notes4, sources };
}
function arealMass(ply3) {
  return ply3.density === void 0 ? void 0 : ply3.density * ply3.thickness;
}

// packages/core/src/material/porous-matrix.ts
var usualVoidLimit = 0.01;
function porousMatrix(resin2, porosity) {
  demand(
    positive("resin E", resin2.E, "Pa"),
    between("resin nu", resin2.nu, -1, 0.5, "not-admissible"),
    within("porosity", porosity, 0, 0.9)
  );
  const K = resin2.E / (3 * (1 - 2 * resin2.nu));
  const G = resin2.E / (2 * (1 + resin2.nu));
  const solid = 1 - porosity;
  const bulk = K * solid / (1 + 3 * porosity * K / (4 * G));
  const shear2 = G * solid / (1 + 6 * porosity * (K + 2 * G) / (9 * K + 8 * G));
  return { E: 9 * bulk * shear2 / (3 * bulk + shear2), nu: (3 * bulk - 2 * shear2) / (2 * (3 * bulk + shear2)) };
}
function stiffnessResin(resin2, { fibreVolumeFraction, voidFraction = 0, voidModel }) {
  if (voidModel !== "porous-matrix" || voidFraction === 0) return resin2;
  return { ...resin2, ...porousMatrix(resin2, voidFraction / (1 - fibreVolumeFraction)) };
}
function voidNotes(name, { voidFraction = 0, voidModel = "mass-only" }) {
  if (!(voidFraction > 0)) return [];
  const massOnly = voidModel === "mass-only";
  const assumption2 = massOnly ? { level: "assumption", text: `${name}: voids lower the mass only, the stiffness is that without voids` } : {
    level: "assumption",
    text: `${name}: voids are spheres that soften the resin evenly; strength does not follow them`,
    source: "mori-tanaka-1973"
  };
  if (voidFraction <= usualVoidLimit) return [assumption2];
  const advice = massOnly ? "; its moduli across the fibre and in shear and its strengths are lower than given" : "";
  const text3 = `${name}: void fraction ${shown(voidFraction)} is above ${usualVoidLimit}${advice} (common practice, no source)`;
  return [assumption2, { level: "warning", text: text3 }];
}

// packages/core/src/material/ply-from-constituents.ts
var ruleSources = {
  "halpin-tsai": "halpin-kardos-1976",
  inverse: "jones-1999",
  chamis: "chamis-1984"
};
function fibreFaults(fibre2) {
  const { E1, E2, G12, nu12 } = fibre2;
  return admissibility({ E1, E2, G12, nu12, ...lacksNu23(fibre2) ? {} : { nu23: fibreNu23(fibre2) } });
}
function demandConstituents({ fibre: fibre2, resin: resin2, arealMass: arealMass3, fibreVolumeFraction, voidFraction = 0 }) {
  demand(
    ...fibreFaults(fibre2).map((problem) => ({ ...problem, message: `fibre ${problem.message}` })),
    positive("fibre density", fibre2.density, "kg/m^3"),
    positive("resin E", resin2.E, "Pa"),
    positive("resin density", resin2.density, "kg/m^3"),
    between("resin nu", resin2.nu, -1, 0.5, "not-admissible"),
    positive("areal mass", arealMass3, "kg/m^2"),
    within("fibre volume fraction", fibreVolumeFraction, fibreFractionLimits.lowest, fibreFractionLimits.highest),
    within("void fraction", voidFraction, 0, 0.2)
  );
}
var across = (rule, Pf, Pm, Vf, xi) => {
  if (rule === "inverse") return inverseRule(Pf, Pm, Vf);
  return rule === "chamis" ? chamis(Pf, Pm, Vf) : halpinTsai(Pf, Pm, Vf, xi);
};
function unidirectionalPly(constituents) {
  demandConstituents(constituents);
  const { fibre: fibre2, fibreVolumeFraction: Vf, voidFraction = 0, model = {}, name = fibre2.name } = constituents;
  const resin2 = stiffnessResin(constituents.resin, constituents);
  const porous = resin2 !== constituents.resin;
  const { E2: ruleE2 = "halpin-tsai", G12: ruleG12 = "halpin-tsai", xiE2 = 2, xiG12 = 1 } = model;
  const thickness = thicknessFromArealMass(constituents.arealMass, fibre2.density, Vf);
  const densities = { fibre: fibre2.density, resin: resin2.density, voidFraction };
  const density = densityFromVolumeFraction(Vf, densities);
  const resinMass = resinArealMass(thickness, Vf, densities);
  const E1 = ruleOfMixtures(fibre2.E1, resin2.E, Vf);
  const nu12 = ruleOfMixtures(fibre2.nu12, resin2.nu, Vf);
  const E2 = across(ruleE2, fibre2.E2, resin2.E, Vf, xiE2);
  const G12 = across(ruleG12, fibre2.G12, resin2.E / (2 * (1 + resin2.nu)), Vf, xiG12);
  const plane23 = transverseConstantsOf(fibre2, resin2, Vf, { E1, E2, nu12 });
  const plausible23 = plane23 !== void 0 && plane23.nu23 > -1;
  const expansion2 = thermalExpansion(fibre2, resin2, Vf);
  const swelling = moistureExpansion(fibre2, resin2, Vf, resinMass / (density * thickness));
  const notes4 = voidNotes(name, constituents);
  if (plausible23 && lacksNu23(fibre2)) {
    notes4.push({
      level: "assumption",
      text: `${name}: nu23 of ${fibre2.name} is not given, ${shown(fibreNu23(fibre2))} is assumed (no source); it enters nu23 and G23 of the ply only`
    });
  }
  if (plane23 !== void 0 && !plausible23) {
    notes4.push({
      level: "warning",
      text: `${name}: the chosen rule makes E2 stiffer than the phases allow (nu23 below -1); nu23 and G23 are left out`,
      source: "hashin-1979"
    });
  }
  if (swelling !== void 0) {
    notes4.push({ level: "assumption", text: `${name}: the fibre takes up no moisture`, source: "schapery-1968" });
  }
  return ply({
    name,
    angle: constituents.angle ?? 0,
    thickness,
    E1,
    E2,
    G12,
    nu12,
    G13: G12,
    ...plausible23 ? plane23 : {},
    density,
    fibreArealMass: constituents.arealMass,
    resinArealMass: resinMass,
    fibreVolumeFraction: Vf,
    ...voidFraction > 0 ? { voidFraction } : {},
    ...expansion2 === void 0 ? {} : { expansion: expansion2 },
    ...swelling === void 0 ? {} : { moistureExpansion: swelling },
    notes: notes4,
    sources: uniqueSources(
      fibre2.sources,
      resin2.sources,
      ["jones-1999", ruleSources[ruleE2], ruleSources[ruleG12]],
      porous ? ["mori-tanaka-1973"] : [],
      plausible23 ? ["hashin-1979"] : [],
      expansion2 === void 0 && swelling === void 0 ? [] : ["schapery-1968"]
    )
  });
}
function plyFromConstituents(constituents) {
  const result = unidirectionalPly(constituents);
  const { fibreVolumeFraction: Vf } = constituents;
  if (Vf >= 0.3 && Vf <= 0.65) return result;
  const remark2 = Vf > 0.65 ? "above 0.65, hard to wet out" : "below 0.3, unusual for continuous fibre";
  const text3 = `${result.name}: fibre volume fraction ${shown(Vf)} is ${remark2} (common practice, no source)`;
  return { ...result, notes: [...result.notes, { level: "warning", text: text3 }] };
}

// packages/core/src/material/compare-micromechanics.ts
var units = {
  E1: "Pa",
  E2: "Pa",
  G12: "Pa",
  nu12: "",
  nu23: "",
  G23: "Pa",
  alpha1: "1/K",
  alpha2: "1/K"
};
var rules = Object.keys(comparedSources);
var rounding = 1e-9;
function compared(property, models, Vf) {
  const { used, values, phases, xi } = models;
  const bounds = phases && { reuss: inverseRule(...phases, Vf), voigt: ruleOfMixtures(...phases, Vf) };
  const rows = rules.flatMap((rule) => {
    const value = values[rule];
    if (value === void 0) return [];
    const alternative = rule === "rule-of-mixtures" ? "bound" : "alternative";
    return [
      {
        rule,
        value,
        ...rule === "halpin-tsai" && xi !== void 0 ? { xi } : {},
        role: rule === used ? "used" : alternative,
        ...bounds && {
          withinBounds: value >= bounds.reuss * (1 - rounding) && value <= bounds.voigt * (1 + rounding)
        },
        source: comparedSources[rule]
      }
    ];
  });
  const reference2 = rows.find(({ role }) => role === "used")?.value;
  if (reference2 === void 0) return void 0;
  const estimates = rows.filter(({ role }) => role !== "bound").map(({ value }) => value);
  const spread3 = Math.max(...estimates) - Math.min(...estimates);
  return {
    property,
    unit: units[property],
    values: rows,
    ...bounds && { bounds },
    spread: spread3,
    ...reference2 === 0 ? {} : { relativeSpread: spread3 / Math.abs(reference2) }
  };
}
function outside(name, { property, values, bounds }) {
  if (bounds === void 0) return [];
  const gigapascals = (value) => `${shown(Number((value / 1e9).toPrecision(4)))} GPa`;
  return values.filter(({ withinBounds }) => withinBounds === false).map(({ rule, value, source }) => {
    const [side2, bound] = value > bounds.voigt ? ["above the phases in parallel (Voigt)", bounds.voigt] : ["below the phases in series (Reuss)", bounds.reuss];
    const text3 = `${name}: ${property} by ${rule}, ${gigapascals(value)}, lies ${side2}, ${gigapascals(bound)}`;
    return { level: "warning", text: text3, source };
  });
}
function compareMicromechanics(input) {
  const { fibre: fibre2, fibreVolumeFraction: Vf, model = {}, name = fibre2.name } = input;
  const ply3 = unidirectionalPly({ ...input, arealMass: 1 });
  const models = propertyModels({ fibre: fibre2, resin: stiffnessResin(input.resin, input), Vf, ply: ply3, model });
  const properties = Object.keys(units).map((property) => compared(property, models[property], Vf)).filter((found) => found !== void 0);
  return {
    properties,
    notes: [...ply3.notes, ...properties.flatMap((property) => outside(name, property))],
    sources: uniqueSources(
      ply3.sources,
      properties.flatMap(({ values }) => values.map(({ source }) => source))
    )
  };
}

// packages/core/src/material/core-ply.ts
var anisotropic = 0.05;
function corePly({ E, G, nu, notes: notes4 = [], name = "core", ...rest }) {
  demand(positive("E", E, "Pa", "not-admissible"), positive("G", G, "Pa", "not-admissible"));
  const isotropic = E / (2 * G) - 1;
  if (nu === void 0 && !(isotropic >= 0 && isotropic < 0.5)) {
    fail({
      code: "missing-key",
      message: `${name} needs nu: E/(2G) - 1 = ${shown(isotropic)} is no Poisson ratio of an isotropic core`,
      allowed: "E/(2G) - 1 from 0 to 0.5, or nu given"
    });
  }
  const ratio = nu ?? isotropic;
  const inPlane2 = E / (2 * (1 + ratio));
  const assumed = [];
  if (nu === void 0) {
    assumed.push({
      level: "assumption",
      text: `${name}: Poisson ratio ${shown(ratio)} from E/(2G) - 1, as for an isotropic core`
    });
  } else if (Math.abs(inPlane2 / G - 1) > anisotropic) {
    const odd = G > E ? ". G above E is that of a honeycomb, not of a foam: check the two" : "";
    assumed.push({
      level: G > E ? "warning" : "assumption",
      text: `${name}: shear in the plane is E/(2 (1 + nu)) = ${shown(Number((inPlane2 / 1e6).toPrecision(4)))} MPa; the G given, ${shown(G / 1e6)} MPa, counts through the thickness alone${odd}`
    });
  }
  return ply({
    ...rest,
    name,
    E1: E,
    E2: E,
    G12: inPlane2,
    nu12: ratio,
    G13: G,
    G23: G,
    core: true,
    notes: [...notes4, ...assumed]
  });
}

// packages/core/src/material/crimp-geometry.ts
var usualHarness = { plain: 2, twill: 4, satin: 5 };
var leastHarness = { plain: 2, twill: 3, satin: 4 };
function yarnsPerRepeat(weave, harness = usualHarness[weave ?? "plain"]) {
  demand(within("harness", harness, 2, 24));
  const least2 = weave === void 0 ? 2 : leastHarness[weave];
  if (!Number.isInteger(harness) || harness < least2 || weave === "plain" && harness !== 2) {
    const allowed = weave === "plain" ? "2" : `a whole number of ${least2} or more`;
    fail({
      code: "contradiction",
      message: `harness = ${shown(harness)} is no ${weave === void 0 ? "" : `${weave} `}weave`,
      allowed
    });
  }
  return harness;
}
function oneOf(given) {
  const found = Object.entries(given).filter((entry2) => entry2[1] !== void 0);
  const names4 = Object.keys(given).join(" or ");
  const [only] = found;
  if (only === void 0) return fail({ code: "missing-key", message: `the weave's geometry needs ${names4}` });
  if (found.length > 1) {
    const both = found.map(([name, value]) => `${name} = ${shown(value)}`).join(" and ");
    fail({ code: "contradiction", message: `${both} are both given`, allowed: names4 });
  }
  return only;
}
var points = 64;
function surplusLength(slope) {
  let sum5 = 0;
  for (let i = 0; i < points; i++) {
    const tangent = slope * Math.cos(Math.PI * (i + 0.5) / points);
    sum5 += tangent * tangent / (1 + Math.sqrt(1 + tangent * tangent));
  }
  return sum5 / points;
}
function yarnPath(length2, rise2, harness) {
  const slope = Math.PI * rise2 / (2 * length2);
  const undulatedShare = 2 / harness;
  return {
    undulatedShare,
    length: length2,
    rise: rise2,
    slope,
    angle: Math.atan(slope) * 180 / Math.PI,
    crimp: undulatedShare * surplusLength(slope)
  };
}
function weavePaths(geometry, name = "cloth") {
  const { weave, clothThickness, yarnThickness, yarnCount, yarnWidth, weftCount, warpShare = 0.5 } = geometry;
  const harness = yarnsPerRepeat(weave, geometry.harness);
  const [thicknessName, thickness] = oneOf({ clothThickness, yarnThickness });
  const [spacingName, spacing2] = oneOf({ yarnCount, yarnWidth });
  demand(
    positive(thicknessName, thickness, "m"),
    positive(spacingName, spacing2, spacingName === "yarnCount" ? "1/m" : "m"),
    weftCount === void 0 ? void 0 : positive("weftCount", weftCount, "1/m"),
    between("warp share", warpShare, 0, 1)
  );
  const cloth = thicknessName === "clothThickness" ? thickness : 2 * thickness;
  const warpSpacing = spacingName === "yarnCount" ? 1 / spacing2 : spacing2;
  const weftSpacing = weftCount === void 0 ? warpSpacing : 1 / weftCount;
  const notes4 = [];
  const assume = (text3) => notes4.push({ level: "assumption", text: `${name}: ${text3}` });
  if (geometry.harness === void 0 && weave !== "plain") {
    assume(`${weave ?? "plain"} weave with ${harness} yarns in a repeat assumed for the crimp`);
  }
  return {
    warp: yarnPath(weftSpacing, (1 - warpShare) * cloth, harness),
    weft: yarnPath(warpSpacing, warpShare * cloth, harness),
    notes: notes4
  };
}

// packages/core/src/material/reduced-stiffness.ts
function reducedStiffness({ E1, E2, G12, nu12 }) {
  const d = 1 - nu12 * nu12 * E2 / E1;
  return [E1 / d, nu12 * E2 / d, E2 / d, G12];
}
function constantsFromStiffness([Q11, Q12, Q22, Q66]) {
  return { E1: Q11 - Q12 * Q12 / Q22, E2: Q22 - Q12 * Q12 / Q11, G12: Q66, nu12: Q12 / Q22 };
}
function stiffnessInvariants([Q11, Q12, Q22, Q66]) {
  return {
    U1: (3 * Q11 + 3 * Q22 + 2 * Q12 + 4 * Q66) / 8,
    U2: (Q11 - Q22) / 2,
    U3: (Q11 + Q22 - 2 * Q12 - 4 * Q66) / 8,
    U4: (Q11 + Q22 + 6 * Q12 - 4 * Q66) / 8,
    U5: (Q11 + Q22 - 2 * Q12 + 4 * Q66) / 8
  };
}
function crossPlyStiffness(at0, share2, at90 = at0) {
  const mean3 = (first2, second2) => share2 * first2 + (1 - share2) * second2;
  return [mean3(at0[0], at90[2]), mean3(at0[1], at90[1]), mean3(at0[2], at90[0]), mean3(at0[3], at90[3])];
}

// packages/core/src/material/undulated-yarn.ts
var assumedPlyNu23 = 0.4;
function tiltMeans(slope, share2 = 1) {
  const q2 = slope * slope;
  const root2 = Math.sqrt(1 + q2);
  const s2 = share2 * q2 / (root2 * (1 + root2));
  const c2s2 = share2 * q2 / (2 * root2 * root2 * root2);
  return { c4: 1 - s2 - c2s2, c2s2, s4: s2 - c2s2, c2: 1 - s2, s2 };
}
function equalStressLayer(yarn, { c4, c2s2, s4, c2, s2 }) {
  const { E1, E2, G12, nu12, G13 = G12, nu23 = assumedPlyNu23 } = yarn;
  const S11 = c4 / E1 + c2s2 * (1 / G13 - 2 * nu12 / E1) + s4 / E2;
  const S12 = -(c2 * nu12 / E1 + s2 * nu23 / E2);
  const determinant = S11 / E2 - S12 * S12;
  return [1 / E2 / determinant, -S12 / determinant, S11 / determinant];
}
function equalStrainLayer(yarn, means) {
  const { E1, E2, G12, nu12, G13 = G12, nu23 = assumedPlyNu23 } = yarn;
  const { c4, c2s2, s4, c2, s2 } = means;
  if (!(nu23 > -1)) {
    fail({
      code: "not-admissible",
      message: `nu23 = ${shown(nu23)} leaves no shear modulus G23 = E2 / (2 (1 + nu23))`,
      allowed: "more than -1"
    });
  }
  const K = planeStrainBulkModulus({ E1, E2, nu12, nu23 });
  if (!(K > 0 && Number.isFinite(K))) return void 0;
  const G23 = E2 / (2 * (1 + nu23));
  const [along2, coupled, across2, plane] = [E1 + 4 * K * nu12 * nu12, 2 * K * nu12, K + G23, K - G23];
  const C11 = c4 * along2 + 2 * c2s2 * (coupled + 2 * G13) + s4 * across2;
  const C33 = s4 * along2 + 2 * c2s2 * (coupled + 2 * G13) + c4 * across2;
  const C13 = c2s2 * (along2 + across2 - 4 * G13) + (c4 + s4) * coupled;
  const C12 = c2 * coupled + s2 * plane;
  const C23 = s2 * coupled + c2 * plane;
  return [C11 - C13 * C13 / C33, C12 - C13 * C23 / C33, across2 - C23 * C23 / C33];
}

// packages/core/src/material/crimp-factor.ts
var steepAngle = 15;
var straight = tiltMeans(0);
function crimpFactorFromGeometry(input) {
  const { ud, weftUd = ud, warpShare = 0.5, name = "cloth" } = input;
  const { warp: warp2, weft: weft2, notes: notes4 } = weavePaths(input, name);
  const warpTilt = tiltMeans(warp2.slope, warp2.undulatedShare);
  const weftTilt = tiltMeans(weft2.slope, weft2.undulatedShare);
  const cloth = (along2, across2) => (
    // Shear in the plane does not enter the moduli along the yarns.
    constantsFromStiffness(crossPlyStiffness([...along2, ud.G12], warpShare, [...across2, weftUd.G12]))
  );
  const flat = cloth(equalStressLayer(ud, straight), equalStressLayer(weftUd, straight));
  const factors2 = (along2, across2) => {
    const { E1, E2 } = cloth(along2, across2);
    return { E1: E1 / flat.E1, E2: E2 / flat.E2 };
  };
  const stiff = [equalStrainLayer(ud, warpTilt), equalStrainLayer(weftUd, weftTilt)];
  const high = stiff[0] && stiff[1] && factors2(stiff[0], stiff[1]);
  const without4 = high === void 0 ? "" : `; ${high.E1.toFixed(3)} and ${high.E2.toFixed(3)} without that shear`;
  const more = [
    {
      level: "assumption",
      text: `${name}: crimp from yarns along a sine over ${shown(warp2.undulatedShare)} of their length, one yarn spacing per change of sides, slices free to shear but not to bend: a low estimate${without4}`,
      source: "ishikawa-chou-1982"
    }
  ];
  if (ud.nu23 === void 0 || weftUd.nu23 === void 0) {
    const text3 = `${name}: nu23 of the yarn is not given, ${assumedPlyNu23} is assumed for its tilt`;
    more.push({ level: "assumption", text: text3 });
  }
  const steepest2 = Math.max(warp2.angle, weft2.angle);
  if (steepest2 > steepAngle) {
    const text3 = `${name}: yarns tilted by up to ${shown(steepest2)} degrees, above ${steepAngle}: the crimp factor is rough (common practice, no source)`;
    more.push({ level: "warning", text: text3 });
  }
  return {
    ...factors2(equalStressLayer(ud, warpTilt), equalStressLayer(weftUd, weftTilt)),
    ...high && { high },
    warp: warp2,
    weft: weft2,
    notes: [...notes4, ...more],
    sources: ["ishikawa-chou-1982", "selvage-2026-derivation"]
  };
}

// packages/core/src/material/crimp-choice.ts
var usualCrimpFactors = { plain: 0.9, twill: 0.93, satin: 0.97 };
function chooseCrimp({ name, thickness, warp: warp2, weft: weft2, share: share2 }, options) {
  const { crimpFactor, yarnCount, weave } = options;
  if (options.harness !== void 0) yarnsPerRepeat(weave, options.harness);
  const assumed = (text4) => [{ level: "assumption", text: `${name}: ${text4}` }];
  if (crimpFactor !== void 0) {
    const unused2 = `crimp factor ${shown(crimpFactor)} as given; the yarn count is not used`;
    const notes4 = yarnCount === void 0 ? [] : assumed(unused2);
    return { k1: crimpFactor, k2: crimpFactor, basis: "given", notes: notes4, sources: [] };
  }
  if (yarnCount === void 0) {
    const k = usualCrimpFactors[weave ?? "plain"];
    const text4 = `crimp factor ${shown(k)} taken for a ${weave ?? "plain"} weave (common practice, no source)`;
    return { k1: k, k2: k, basis: "usual", notes: assumed(text4), sources: [] };
  }
  const geometry = { ...options, yarnCount, clothThickness: thickness, warpShare: share2 };
  const found = crimpFactorFromGeometry({ ...geometry, name, ud: warp2, weftUd: weft2 });
  const angles = [found.warp.angle, found.weft.angle].map((angle2) => shown(Number(angle2.toPrecision(3)))).join(" and ");
  const factors2 = [found.E1, found.E2].map((factor) => factor.toFixed(3)).join(" and ");
  const text3 = `crimp factors ${factors2} along warp and weft, from yarns tilted by up to ${angles} degrees`;
  return {
    k1: found.E1,
    k2: found.E2,
    basis: "geometry",
    geometry: found,
    notes: [...assumed(text3), ...found.notes],
    sources: found.sources
  };
}

// packages/core/src/material/fabric-crimp.ts
function fabricCrimp(fabric2) {
  if (fabric2.architecture !== "woven") return void 0;
  const { fibre: fibre2, weftFibre = fibre2, arealMass: arealMass3, warpShare = 0.5 } = fabric2;
  const warp2 = unidirectionalPly({ ...fabric2, arealMass: arealMass3 * warpShare });
  const weft2 = unidirectionalPly({ ...fabric2, fibre: weftFibre, arealMass: arealMass3 * (1 - warpShare) });
  const thickness = warp2.thickness + weft2.thickness;
  return chooseCrimp({ name: fabric2.name, thickness, warp: warp2, weft: weft2, share: warp2.thickness / thickness }, fabric2);
}

// packages/core/src/material/fabric-fibres.ts
function shares({ fibre: fibre2, architecture, weftFibre, warpShare = 0.5, layers = [] }) {
  if (architecture === "woven" && weftFibre !== void 0) {
    return [
      [fibre2, warpShare],
      [weftFibre, 1 - warpShare]
    ];
  }
  if (architecture === "multiaxial" && layers.length > 0)
    return layers.map((layer) => [layer.fibre ?? fibre2, layer.share]);
  return [[fibre2, 1]];
}
function fabricFibres(fabric2) {
  const found = /* @__PURE__ */ new Map();
  for (const [{ name, density }, share2] of shares(fabric2)) {
    const mass = fabric2.arealMass * share2;
    const { arealMass: arealMass3 = 0, solidThickness = 0 } = found.get(name) ?? {};
    found.set(name, {
      name,
      arealMass: arealMass3 + mass,
      solidThickness: solidThickness + solidFibreThickness(mass, density)
    });
  }
  return [...found.values()];
}
function fabricFibreThickness(fabric2) {
  return fabricFibres(fabric2).reduce((sum5, { solidThickness }) => sum5 + solidThickness, 0);
}

// packages/core/src/material/mat.ts
function fromInvariants(Q) {
  const { U1, U4, U5 } = stiffnessInvariants(Q);
  return { E: (U1 * U1 - U4 * U4) / U1, nu12: U4 / U1, G12: U5 };
}
function fromEighths({ E1, E2 }) {
  const E = (3 * E1 + 5 * E2) / 8;
  const G12 = (E1 + 2 * E2) / 8;
  return { E, nu12: E / (2 * G12) - 1, G12 };
}
var lightestMat = 0.08;
function matPly(ud, model = "invariants") {
  const Q = reducedStiffness(ud);
  const [Q11, Q12, Q22] = Q;
  const { E, nu12, G12 } = model === "tsai-pagano" ? fromEighths(ud) : fromInvariants(Q);
  const mean3 = (e1, e2) => ((Q11 + Q12) * e1 + (Q12 + Q22) * e2) / (Q11 + Q22 + 2 * Q12);
  const { expansion: expansion2, moistureExpansion: moistureExpansion3, G13, G23, nu23: _, ...rest } = ud;
  const alpha = expansion2 && mean3(expansion2.alpha1, expansion2.alpha2);
  const beta = moistureExpansion3 && mean3(moistureExpansion3.beta1, moistureExpansion3.beta2);
  const shear2 = G13 === void 0 || G23 === void 0 ? void 0 : (G13 + G23) / 2;
  const notes4 = [
    ...ud.notes,
    {
      level: "assumption",
      text: `${ud.name}: strands of the mat count as endless and evenly spread over all angles`,
      source: "tsai-pagano-1968"
    }
  ];
  const { fibreVolumeFraction: Vf, fibreArealMass: mass } = ud;
  if (mass !== void 0 && mass < lightestMat) {
    const text3 = `${ud.name}: ${shown(mass * 1e3)} g/m^2 is light for a chopped mat; US mat is counted in oz/ft^2, nine times an oz/yd^2 (common practice, no source)`;
    notes4.push({ level: "warning", text: text3 });
  }
  if (Vf !== void 0 && Vf > 0.4) {
    const text3 = `${ud.name}: fibre volume fraction ${shown(Vf)} is above 0.4, hardly reached with a mat (common practice, no source)`;
    notes4.push({ level: "warning", text: text3 });
  }
  return ply({
    ...rest,
    E1: E,
    E2: E,
    G12,
    nu12,
    ...shear2 !== void 0 && { G13: shear2, G23: shear2 },
    ...alpha !== void 0 && { expansion: { alpha1: alpha, alpha2: alpha } },
    ...beta !== void 0 && { moistureExpansion: { beta1: beta, beta2: beta } },
    notes: notes4,
    sources: uniqueSources(ud.sources, ["tsai-pagano-1968"])
  });
}

// packages/core/src/material/cloth.ts
function clothFreeStrain(Q, e, share2, R, f) {
  const N1 = share2 * (Q[0] * e[0] + Q[1] * e[1]) + (1 - share2) * (R[1] * f[0] + R[2] * f[1]);
  const N2 = share2 * (Q[1] * e[0] + Q[2] * e[1]) + (1 - share2) * (R[0] * f[0] + R[1] * f[1]);
  const [A11, A12, A22] = crossPlyStiffness(Q, share2, R);
  const determinant = A11 * A22 - A12 * A12;
  return [(A22 * N1 - A12 * N2) / determinant, (A11 * N2 - A12 * N1) / determinant];
}
function clothPly(layers, body2, options) {
  const { warp: warp2, weft: weft2, share: share2 } = layers;
  const [Q, R] = [reducedStiffness(warp2), reducedStiffness(weft2)];
  const flat = constantsFromStiffness(crossPlyStiffness(Q, share2, R));
  const { k1, k2, notes: notes4, sources } = chooseCrimp({ ...layers, name: body2.name, thickness: body2.thickness }, options);
  const free = (e, f) => e && f && clothFreeStrain(Q, e, share2, R, f);
  const heat = ({ expansion: e }) => e && [e.alpha1, e.alpha2];
  const moisture2 = ({ moistureExpansion: e }) => e && [e.beta1, e.beta2];
  const thermal = free(heat(warp2), heat(weft2));
  const swelling = free(moisture2(warp2), moisture2(weft2));
  const inSeries = (first2, second2) => first2 === void 0 || second2 === void 0 ? void 0 : 1 / (share2 / first2 + (1 - share2) / second2);
  const [G13, G23] = [inSeries(warp2.G13, weft2.G23), inSeries(warp2.G23, weft2.G13)];
  return ply({
    ...body2,
    ...flat,
    E1: k1 * flat.E1,
    E2: k2 * flat.E2,
    nu12: flat.nu12 * Math.sqrt(k1 / k2),
    ...G13 !== void 0 && { G13 },
    ...G23 !== void 0 && { G23 },
    ...thermal && { expansion: { alpha1: thermal[0], alpha2: thermal[1] } },
    ...swelling && { moistureExpansion: { beta1: swelling[0], beta2: swelling[1] } },
    notes: [...body2.notes, ...notes4],
    sources: uniqueSources(body2.sources, ["ishikawa-chou-1982"], sources)
  });
}

// packages/core/src/material/woven.ts
var demandWoven = ({ warpShare = 0.5, crimpFactor = 1 }) => demand(between("warp share", warpShare, 0, 1), over("crimp factor", crimpFactor, 0.5, 1));
function wovenPly(ud, options = {}) {
  demandWoven(options);
  const { expansion: _, moistureExpansion: __, G13: ___, G23: ____, nu23: _____, ...body2 } = ud;
  return clothPly({ warp: ud, weft: ud, share: options.warpShare ?? 0.5 }, body2, options);
}
var sum = (first2, second2) => first2 === void 0 || second2 === void 0 ? void 0 : first2 + second2;
function perClothMoisture(layer, resinMassFraction) {
  const { moistureExpansion: own2, resinArealMass: resin2, density } = layer;
  if (own2 === void 0 || resin2 === void 0 || density === void 0) return layer;
  const factor = resin2 / (density * layer.thickness) / resinMassFraction;
  return { ...layer, moistureExpansion: { beta1: own2.beta1 * factor, beta2: own2.beta2 * factor } };
}
function hybridWovenPly(warp2, weft2, options = {}) {
  demandWoven(options);
  const thickness = warp2.thickness + weft2.thickness;
  const fibreMass = sum(warp2.fibreArealMass, weft2.fibreArealMass);
  const resinMass = sum(warp2.resinArealMass, weft2.resinArealMass);
  const mass = sum(fibreMass, resinMass);
  const { name, angle: angle2, fibreVolumeFraction, voidFraction } = warp2;
  const body2 = {
    name,
    angle: angle2,
    thickness,
    ...mass !== void 0 && { density: mass / thickness },
    ...fibreMass !== void 0 && { fibreArealMass: fibreMass },
    ...resinMass !== void 0 && { resinArealMass: resinMass },
    ...fibreVolumeFraction !== void 0 && { fibreVolumeFraction },
    ...voidFraction !== void 0 && { voidFraction },
    notes: uniqueNotes([...warp2.notes, ...weft2.notes]),
    sources: uniqueSources(warp2.sources, weft2.sources)
  };
  const inCloth = (layer) => resinMass === void 0 || mass === void 0 ? layer : perClothMoisture(layer, resinMass / mass);
  return clothPly({ warp: inCloth(warp2), weft: inCloth(weft2), share: warp2.thickness / thickness }, body2, options);
}

// packages/core/src/material/fabric-plies.ts
var ownedBy = [
  ["weave", "woven"],
  ["warpShare", "woven"],
  ["weftFibre", "woven"],
  ["yarnCount", "woven"],
  ["weftCount", "woven"],
  ["harness", "woven"],
  ["layers", "multiaxial"],
  ["matModel", "mat"]
];
function* misplaced(fabric2) {
  const { name, architecture } = fabric2;
  for (const [key, owner] of ownedBy) {
    if (fabric2[key] !== void 0 && architecture !== owner) {
      yield { code: "contradiction", message: `${key} is for a ${owner} fabric, ${name} is ${architecture}` };
    }
  }
  const { crimpFactor = 1 } = fabric2;
  if (crimpFactor !== 1 && architecture !== "woven") {
    const message = `crimpFactor = ${shown(crimpFactor)} is for a woven fabric, ${name} is ${architecture}`;
    yield { code: "contradiction", message, allowed: "1" };
  }
  if (fabric2.weftCount !== void 0 && fabric2.yarnCount === void 0) {
    yield {
      code: "missing-key",
      message: `fabric ${name} has a weftCount but no yarnCount`,
      hint: "give both, or none"
    };
  }
}
function checkedLayers({ name, layers = [] }) {
  if (layers.length === 0) {
    fail({
      code: "missing-key",
      message: `multiaxial fabric ${name} has no layers`,
      hint: "give layers from the lower face up, each with angle and share"
    });
  }
  demand(...layers.flatMap((layer) => [finite("layer angle", layer.angle), positive("layer share", layer.share, "")]));
  const sum5 = layers.reduce((total3, layer) => total3 + layer.share, 0);
  if (Math.abs(sum5 - 1) > 1e-6) {
    fail({
      code: "out-of-range",
      message: `layer shares of fabric ${name} sum to ${shown(sum5)}, must be 1`,
      allowed: "shares that sum to 1 within 1e-6"
    });
  }
  return layers;
}
function hybridCloth(fabric2, weftFibre, angle2) {
  const { arealMass: arealMass3, warpShare = 0.5 } = fabric2;
  demand(between("warp share", warpShare, 0, 1));
  const warp2 = plyFromConstituents({ ...fabric2, arealMass: arealMass3 * warpShare, angle: angle2 });
  const weft2 = plyFromConstituents({ ...fabric2, fibre: weftFibre, arealMass: arealMass3 * (1 - warpShare), angle: angle2 });
  return hybridWovenPly(warp2, weft2, fabric2);
}
var foldedAngle = (angle2) => Math.abs(angle2) <= 90 ? angle2 : angle2 - 180 * Math.round(angle2 / 180);
function fabricPlies(fabric2, { angle: angle2 = 0, mirrored = false } = {}) {
  demand(finite("angle", angle2), ...misplaced(fabric2));
  const strong = (bare, strengths2 = fabric2.strengths) => strengths2 === void 0 ? bare : ply({ ...bare, strengths: strengths2 });
  if (fabric2.architecture === "multiaxial") {
    const plies2 = checkedLayers(fabric2).map((layer) => {
      const bare = plyFromConstituents({
        ...fabric2,
        fibre: layer.fibre ?? fabric2.fibre,
        arealMass: fabric2.arealMass * layer.share,
        angle: foldedAngle(angle2 + layer.angle)
      });
      return strong(bare, layer.strengths);
    });
    return mirrored ? plies2.reverse() : plies2;
  }
  if (fabric2.architecture === "mat") {
    return [strong(matPly(unidirectionalPly({ ...fabric2, angle: angle2 }), fabric2.matModel))];
  }
  if (fabric2.weftFibre !== void 0) return [strong(hybridCloth(fabric2, fabric2.weftFibre, angle2))];
  const ud = plyFromConstituents({ ...fabric2, angle: angle2 });
  return [strong(fabric2.architecture === "woven" ? wovenPly(ud, fabric2) : ud)];
}

// packages/core/src/material/library.ts
import bibliographyData from "@selvage/reference-data/bibliography.json" with { type: "json" };
import coreData from "@selvage/reference-data/cores.json" with { type: "json" };
import fabricData from "@selvage/reference-data/fabrics.json" with { type: "json" };
import fibreData from "@selvage/reference-data/fibres.json" with { type: "json" };
import plyData from "@selvage/reference-data/plies.json" with { type: "json" };
import resinData from "@selvage/reference-data/resins.json" with { type: "json" };
import threadData from "@selvage/reference-data/threads.json" with { type: "json" };
function completed(thread, threads) {
  const parent = thread.inherits === void 0 ? void 0 : threads[thread.inherits];
  return parent === void 0 ? thread : { ...thread, values: { ...completed(parent, threads).values, ...thread.values } };
}
function completedThreads(threads) {
  return Object.fromEntries(Object.entries(threads).map(([id, thread]) => [id, completed(thread, threads)]));
}
var library = {
  fibres: fibreData,
  resins: resinData,
  plies: plyData,
  fabrics: fabricData,
  cores: coreData,
  threads: completedThreads(threadData)
};
var bibliography = bibliographyData;
function entryOf(shelf, id) {
  return Object.hasOwn(shelf, id) ? shelf[id] : void 0;
}

// packages/core/src/quantity/kind.ts
var kind = (name, si, metric, us, ...alsoAccepted) => ({
  name,
  si,
  metric,
  us,
  alsoAccepted
});
var kinds = {
  number: kind("a plain number", "", "", ""),
  fraction: kind("a fraction", "", "%", "%"),
  angle: kind("an angle", "deg", "deg", "deg", "rad"),
  length: kind("a length", "m", "mm", "in", "cm", "m", "um", "mil", "ft"),
  longLength: kind("a length", "m", "m", "ft", "mm", "cm", "in", "yd"),
  area: kind("an area", "m^2", "cm^2", "in^2", "mm^2", "m^2", "ft^2"),
  mass: kind("a mass", "kg", "g", "oz", "kg", "lb"),
  time: kind("a time", "s", "min", "min", "s", "h"),
  rate: kind("a rate", "1/s", "1/min", "1/min", "1/s", "1/h"),
  frequency: kind("a frequency", "1/s", "Hz", "Hz", "1/s"),
  density: kind("a density", "kg/m^3", "kg/m^3", "lb/ft^3", "g/cm^3", "lb/in^3"),
  arealMass: kind("an areal mass", "kg/m^2", "g/m^2", "oz/yd^2", "kg/m^2", "oz/ft^2"),
  linearDensity: kind("a linear density", "kg/m", "tex", "denier", "dtex", "g/km"),
  tenacity: kind("a tenacity", "N/(kg/m)", "N/tex", "gf/denier", "cN/dtex", "cN/tex"),
  threadModulus: kind("a thread modulus", "N/(kg/m)", "N/tex", "gf/denier", "cN/dtex"),
  modulus: kind("a modulus", "Pa", "GPa", "Msi", "MPa", "psi", "ksi"),
  stress: kind("a stress", "Pa", "MPa", "ksi", "GPa", "psi"),
  pressure: kind("a pressure", "Pa", "kPa", "psi", "Pa", "bar", "MPa"),
  force: kind("a force", "N", "N", "lbf", "kN", "kgf"),
  forcePerLength: kind("a force per length", "N/m", "N/mm", "lbf/in", "kN/m", "N/m"),
  momentPerLength: kind("a moment per length", "N", "N", "in*lbf/in", "N*m/m", "N*mm/mm"),
  couplingStiffness: kind("a coupling stiffness", "N", "N", "lbf", "kN"),
  bendingStiffness: kind("a bending stiffness per width", "N*m", "N*mm", "in*lbf", "N*m"),
  energy: kind("an energy", "J", "mJ", "in*lbf", "J", "N*m", "N*mm"),
  toughness: kind("a toughness", "J/m^2", "J/m^2", "in*lbf/in^2", "kJ/m^2", "N/mm"),
  temperature: kind("a temperature", "K", "degC", "degF", "K"),
  temperatureChange: kind("a temperature difference", "K", "K", "degF", "degC"),
  temperatureGradient: kind("a temperature gradient", "K/m", "K/mm", "degF/in", "K/m"),
  expansion: kind("a thermal expansion coefficient", "1/K", "1e-6/K", "1e-6/degF", "1/K", "um/m/K"),
  strain: kind("a strain", "", "1e-6", "1e-6", "%"),
  perLength: kind("a count per length", "1/m", "1/cm", "1/in", "1/mm"),
  curvature: kind("a curvature", "1/m", "1/m", "1/in", "1/mm"),
  curvatureExpansion: kind("a curvature per temperature difference", "1/m/K", "1/m/K", "1/in/degF"),
  perArea: kind("a count per area", "1/m^2", "1/cm^2", "1/in^2", "1/mm^2"),
  lengthPerArea: kind("a length per area", "m/m^2", "m/m^2", "yd/yd^2", "m/cm^2"),
  lengthPerLength: kind("a length per length", "m/m", "m/m", "yd/yd"),
  massPerLength: kind("a mass per length", "kg/m", "g/m", "oz/yd", "kg/m")
};

// packages/core/src/quantity/mathjs-units.ts
import { create, createUnitDependencies, unitDependencies } from "mathjs";
var tradeUnits = [
  ["tex", "1e-6 kg/m"],
  // ISO 1144: grams per kilometre
  ["dtex", "1e-7 kg/m"],
  ["ktex", "1e-3 kg/m"],
  ["denier", "0.1111111111111111e-6 kg/m"],
  // grams per 9 kilometres
  ["gf", "9.80665e-3 N"],
  ["psi", "1 lbf/in^2"],
  ["ksi", "1e3 lbf/in^2"],
  ["Msi", "1e6 lbf/in^2"]
];
var instance;
function unitSystem() {
  if (instance === void 0) {
    instance = create({ ...unitDependencies, ...createUnitDependencies });
    for (const [name, definition] of tradeUnits) instance.createUnit(name, { definition }, { override: true });
  }
  return instance;
}
var baseDimensions = ["M", "L", "T", "I", "K", "J", "N", "A", "B"];
var withoutNoise = (value) => Number(value.toPrecision(15));
function readUnitWithMathjs(expression) {
  let unit2;
  try {
    const text3 = /^\d/.test(expression) ? expression : `1 ${expression}`;
    unit2 = unitSystem().unit(text3);
  } catch {
    return void 0;
  }
  const dimension = unit2.dimensions.map((power, i) => Math.abs(power) < 1e-12 ? "" : `${baseDimensions[i]}${power}`).filter((part) => part !== "").join(" ");
  const only = unit2.units.length === 1 ? unit2.units[0]?.unit : void 0;
  const offset = only !== void 0 && dimension === "K1" ? only.offset * only.value : 0;
  return { factor: withoutNoise(unit2.value), offset: withoutNoise(offset), dimension };
}

// packages/core/src/quantity/prepared-units.json
var prepared_units_default = {
  "1/K": [1, "K-1"],
  "1/cm": [100, "L-1"],
  "1/cm^2": [1e4, "L-2"],
  "1/degC": [1, "K-1"],
  "1/degF": [1.8, "K-1"],
  "1/h": [277777777777778e-18, "T-1"],
  "1/in": [39.3700787401575, "L-1"],
  "1/in/degF": [70.8661417322835, "L-1 K-1"],
  "1/in^2": [1550.0031000062, "L-2"],
  "1/m": [1, "L-1"],
  "1/m/K": [1, "L-1 K-1"],
  "1/m^2": [1, "L-2"],
  "1/min": [0.0166666666666667, "T-1"],
  "1/mm": [1e3, "L-1"],
  "1/mm^2": [1e6, "L-2"],
  "1/s": [1, "T-1"],
  "1e-6/K": [1e-6, "K-1"],
  "1e-6/degF": [18e-7, "K-1"],
  GPa: [1e9, "M1 L-1 T-2"],
  Hz: [1, "T-1"],
  J: [1, "M1 L2 T-2"],
  "J/m^2": [1, "M1 T-2"],
  K: [1, "K1"],
  "K/m": [1, "L-1 K1"],
  "K/mm": [1e3, "L-1 K1"],
  MPa: [1e6, "M1 L-1 T-2"],
  Msi: [689475729316836e-5, "M1 L-1 T-2"],
  N: [1, "M1 L1 T-2"],
  "N*m": [1, "M1 L2 T-2"],
  "N*m/m": [1, "M1 L1 T-2"],
  "N*mm": [1e-3, "M1 L2 T-2"],
  "N*mm/mm": [1, "M1 L1 T-2"],
  "N/(kg/m)": [1, "L2 T-2"],
  "N/cm": [100, "M1 T-2"],
  "N/dtex": [1e7, "L2 T-2"],
  "N/m": [1, "M1 T-2"],
  "N/mm": [1e3, "M1 T-2"],
  "N/mm^2": [1e6, "M1 L-1 T-2"],
  "N/tex": [1e6, "L2 T-2"],
  Pa: [1, "M1 L-1 T-2"],
  bar: [1e5, "M1 L-1 T-2"],
  cN: [0.01, "M1 L1 T-2"],
  "cN/denier": [9e4, "L2 T-2"],
  "cN/dtex": [1e5, "L2 T-2"],
  "cN/tex": [1e4, "L2 T-2"],
  cm: [0.01, "L1"],
  "cm^2": [1e-4, "L2"],
  deg: [0.0174532925199433, "A1"],
  degC: [1, "K1", 273.15],
  degF: [0.555555555555556, "K1", 255.372222222222],
  "degF/in": [21.8722659667542, "L-1 K1"],
  denier: [111111111111111e-21, "M1 L-1"],
  dtex: [1e-7, "M1 L-1"],
  ft: [0.3048, "L1"],
  "ft*lbf": [1.3558179483314, "M1 L2 T-2"],
  "ft^2": [0.09290304, "L2"],
  g: [1e-3, "M1"],
  "g/cm^2": [10, "M1 L-2"],
  "g/cm^3": [1e3, "M1 L-3"],
  "g/km": [1e-6, "M1 L-1"],
  "g/m": [1e-3, "M1 L-1"],
  "g/m^2": [1e-3, "M1 L-2"],
  "gf/denier": [88259.85, "L2 T-2"],
  h: [3600, "T1"],
  in: [0.0254, "L1"],
  "in*lbf": [0.112984829027617, "M1 L2 T-2"],
  "in*lbf/in": [4.4482216152605, "M1 L1 T-2"],
  "in*lbf/in^2": [175.126835246476, "M1 T-2"],
  "in^2": [64516e-8, "L2"],
  kJ: [1e3, "M1 L2 T-2"],
  "kJ/m^2": [1e3, "M1 T-2"],
  kN: [1e3, "M1 L1 T-2"],
  "kN/m": [1e3, "M1 T-2"],
  kPa: [1e3, "M1 L-1 T-2"],
  kg: [1, "M1"],
  "kg/m": [1, "M1 L-1"],
  "kg/m^2": [1, "M1 L-2"],
  "kg/m^3": [1, "M1 L-3"],
  kgf: [9.80665, "M1 L1 T-2"],
  km: [1e3, "L1"],
  ksi: [689475729316836e-8, "M1 L-1 T-2"],
  ktex: [1e-3, "M1 L-1"],
  lb: [0.45359237, "M1"],
  "lb/ft^2": [4.88242763638305, "M1 L-2"],
  "lb/ft^3": [16.0184633739601, "M1 L-3"],
  "lb/in^3": [27679.9047102031, "M1 L-3"],
  "lb/yd^2": [0.542491959598117, "M1 L-2"],
  lbf: [4.4482216152605, "M1 L1 T-2"],
  "lbf/ft": [14.5939029372064, "M1 T-2"],
  "lbf/in": [175.126835246476, "M1 T-2"],
  "lbf/in^2": [6894.75729316836, "M1 L-1 T-2"],
  m: [1, "L1"],
  "m/cm^2": [1e4, "L-1"],
  "m/m": [1, ""],
  "m/m^2": [1, "L-1"],
  "m/min": [0.0166666666666667, "L1 T-1"],
  mJ: [1e-3, "M1 L2 T-2"],
  mN: [1e-3, "M1 L1 T-2"],
  "m^2": [1, "L2"],
  mg: [1e-6, "M1"],
  "mg/m": [1e-6, "M1 L-1"],
  mil: [254e-7, "L1"],
  min: [60, "T1"],
  mm: [1e-3, "L1"],
  "mm/m": [1e-3, ""],
  "mm/mm": [1, ""],
  "mm^2": [1e-6, "L2"],
  nm: [1e-9, "L1"],
  oz: [0.028349523125, "M1"],
  "oz/ft^2": [0.305151727273941, "M1 L-2"],
  "oz/yd": [0.0310034154910324, "M1 L-1"],
  "oz/yd^2": [0.0339057474748823, "M1 L-2"],
  psi: [6894.75729316836, "M1 L-1 T-2"],
  rad: [1, "A1"],
  s: [1, "T1"],
  tex: [1e-6, "M1 L-1"],
  um: [1e-6, "L1"],
  "um/m/K": [1e-6, "K-1"],
  yd: [0.9144, "L1"],
  "yd/yd": [1, ""],
  "yd/yd^2": [1.09361329833771, "L-1"]
};

// packages/core/src/quantity/unit.ts
var prepared = new Map(
  Object.entries(prepared_units_default).map(
    ([text3, [factor, dimension, offset]]) => [text3, { factor, dimension, offset: offset ?? 0 }]
  )
);
var pureNumbers = /* @__PURE__ */ new Map([
  ["", 1],
  ["%", 0.01],
  ["percent", 0.01],
  ["permille", 1e-3],
  ["ppm", 1e-6],
  ["microstrain", 1e-6],
  ["1e-6", 1e-6]
]);
var spellings = [
  [/^(?:"|″|'')$/, "in"],
  [/^(?:'|′)$/, "ft"],
  [/\bgsm\b/gi, "g/m^2"],
  [/\bspi\b/gi, "1/in"],
  [/^(?:stitch(?:es)?|rows?|holes?|penetrations?|picks?|ends?)\s*(?:\/|per)\s*/i, "1/"],
  [/^(?:g|gf|gram)\s*\/\s*(den(?:ier)?)\b/i, "gf/denier"],
  // the trade's "grams per denier" is a force per linear density
  [/^gpd$/i, "gf/denier"],
  [/\bden\b/gi, "denier"],
  [/\b(in|ft)[*\s-]lbf?s?\b/gi, "$1*lbf"],
  // the trade's inch-pound is a force times a length
  [/\bpli\b/gi, "lbf/in"],
  [/\blbs?\s*\/\s*in(?:ch)?$/gi, "lbf/in"],
  [/\b(?:inch(?:es)?)\b/gi, "in"],
  [/\bsq\s*(yd|ft|in|m|cm|mm)\b/gi, "$1^2"],
  [/\bmicrons?\b/gi, "um"],
  [/\bmils\b/gi, "mil"],
  [/\blbs\b/gi, "lb"],
  [/\bmins\b/gi, "min"],
  [/\bdegrees?\b/gi, "deg"]
];
function normaliseUnit(text3) {
  let unit2 = text3.trim().replace(/[µμ]/g, "u").replace(/°\s*([CF])\b/g, "deg$1").replace(/°/g, "deg").replace(/[·⋅×]/g, "*").replace(
    /[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
    (power) => `^${[...power].map((c) => "\u207B\u2070\xB9\xB2\xB3\u2074\u2075\u2076\u2077\u2078\u2079".indexOf(c) - 1).join("").replace("-1", "-")}`
  ).replace(/([a-zA-Z])\.(?=[a-zA-Z])/g, "$1*").replace(/([a-zA-Z])(-?\d)/g, "$1^$2").replace(/\s*([*/^])\s*/g, "$1");
  for (const [pattern2, plain6] of spellings) unit2 = unit2.replace(pattern2, plain6);
  return unit2.replace(/(\d)e\^-?(\d)/, (whole2) => whole2.replace("^", ""));
}
var longestUnit = 60;
function parseUnit(text3) {
  if (text3.length > longestUnit) return void 0;
  const plain6 = prepared.get(text3);
  if (plain6 !== void 0) return plain6;
  const unit2 = normaliseUnit(text3);
  const pure = pureNumbers.get(unit2);
  if (pure !== void 0) return { factor: pure, offset: 0, dimension: "" };
  return prepared.get(unit2) ?? readUnitWithMathjs(unit2);
}
function knownUnits() {
  return [...prepared.keys()];
}

// packages/core/src/quantity/format.ts
var superscripts = {
  "-": "\u207B",
  "0": "\u2070",
  "1": "\xB9",
  "2": "\xB2",
  "3": "\xB3",
  "4": "\u2074",
  "5": "\u2075",
  "6": "\u2076",
  "7": "\u2077",
  "8": "\u2078",
  "9": "\u2079"
};
var raised = (digits) => [...digits].map((c) => superscripts[c] ?? c).join("");
function prettyUnit(unit2) {
  return unit2.replace(/1e(-?\d+)/g, (_, power) => `10${raised(power)}`).replace(/\^(-?\d+)/g, (_, power) => raised(power)).replace(/\*/g, "\xB7").replace(/\bdeg([CF])/g, "\xB0$1").replace(/\bdeg\b/g, "\xB0").replace(/\bum\b/g, "\xB5m");
}
var displayUnitOf = (kind2, units2) => units2 === "us" ? kinds[kind2].us : kinds[kind2].metric;
function displayUnit(kind2, units2 = "metric") {
  return prettyUnit(displayUnitOf(kind2, units2));
}
function inDisplayUnit(value, kind2, units2 = "metric") {
  if (kind2 === "angle") return value;
  const unit2 = parseUnit(displayUnitOf(kind2, units2));
  if (unit2 === void 0) throw new Error(`kind ${kind2} has no display unit`);
  return kind2 === "temperature" ? (value - unit2.offset) / unit2.factor : value / unit2.factor;
}
function formatNumber(value, digits = 4) {
  if (!Number.isFinite(value)) throw new RangeError(`a result is not a finite number (${value})`);
  if (value === 0) return "0";
  const size4 = Math.abs(value);
  if (size4 >= 1e7 || size4 < 1e-4) {
    return value.toExponential(digits - 1).replace(/\.?0+e/, "e").replace("e+", "e");
  }
  if (size4 >= 10 ** (digits - 1)) return value.toFixed(0);
  const text3 = value.toPrecision(digits);
  return text3.includes("e") ? String(Number(text3)) : text3.includes(".") ? text3.replace(/\.?0+$/, "") : text3;
}
function displayNumber(value, kind2, options = {}) {
  return formatNumber(inDisplayUnit(value, kind2, options.units), options.digits);
}
function formatQuantity(value, kind2, options = {}) {
  const unit2 = displayUnit(kind2, options.units);
  const number7 = displayNumber(value, kind2, options);
  if (unit2 === "") return number7;
  if (unit2 === "\xB0") return `${number7}\xB0`;
  return unit2.startsWith("10") ? `${number7}\xB7${unit2}` : `${number7} ${unit2}`;
}

// packages/core/src/quantity/parse.ts
var numberPattern = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
var fractionPattern = /^(?:([+-]?\d+)[ \u00a0]+)?([+-]?\d+)\s*\/\s*(\d+)(?=\s*(?:[a-zA-Zµμ°"'%]|$))/;
var longestQuantity = 100;
var bareNumberKinds = /* @__PURE__ */ new Set(["number", "fraction", "strain", "angle"]);
function splitNumber(text3) {
  const fraction = fractionPattern.exec(text3);
  if (fraction !== null) {
    const whole2 = fraction[1] === void 0 ? 0 : Number(fraction[1]);
    const part = Number(fraction[2]) / Number(fraction[3]);
    return { value: whole2 < 0 ? whole2 - part : whole2 + part, length: fraction[0].length };
  }
  const number7 = numberPattern.exec(text3);
  return number7 === null ? void 0 : { value: Number(number7[0]), length: number7[0].length };
}
function acceptedUnits(kind2) {
  const { metric, us, si, alsoAccepted } = kinds[kind2];
  return [.../* @__PURE__ */ new Set([metric, us, ...alsoAccepted, si])].filter((unit2) => unit2 !== "");
}
function dimensionOf(kind2) {
  const dimension = parseUnit(kinds[kind2].si)?.dimension;
  if (dimension === void 0) throw new Error(`the SI unit of kind ${kind2} is not a unit`);
  return dimension;
}
var baseNames = {
  M: "mass",
  L: "length",
  T: "time",
  I: "current",
  K: "temperature",
  A: "angle"
};
var superscript = (power) => power === "1" ? "" : [...power].map((c) => c === "-" ? "\u207B" : "\u2070\xB9\xB2\xB3\u2074\u2075\u2076\u2077\u2078\u2079"[Number(c)] ?? c).join("");
function dimensionInWords(dimension) {
  if (dimension === "") return "a pure number";
  return dimension.split(" ").map((part) => `${baseNames[part.charAt(0)] ?? part.charAt(0)}${superscript(part.slice(1))}`).join("\xB7");
}
function withDimension(name, dimension) {
  const words3 = dimensionInWords(dimension);
  return name.endsWith(words3) ? name : `${name} (${words3})`;
}
function whatItIs(unit2) {
  const same4 = Object.keys(kinds).find(
    (name) => name !== "number" && dimensionOf(name) === unit2.dimension
  );
  const words3 = dimensionInWords(unit2.dimension);
  if (unit2.dimension === "") return words3;
  return same4 === void 0 ? words3 : withDimension(kinds[same4].name, unit2.dimension);
}
function toKind(value, unit2, kind2) {
  if (kind2 === "angle")
    return unit2.dimension === "" ? value : value * Number((unit2.factor * (180 / Math.PI)).toPrecision(15));
  return kind2 === "temperature" ? value * unit2.factor + unit2.offset : value * unit2.factor;
}
function degreeHint(unitText, kind2) {
  const degree = kind2.startsWith("temperature") && /^[FC]$/i.test(unitText);
  return degree ? { hint: `did you mean \`deg${unitText.toUpperCase()}\`?` } : {};
}
function hintFor(unit2, fitting) {
  const found = nearest(unit2, fitting) ?? nearest(unit2, knownUnits());
  return found === void 0 ? {} : { hint: `did you mean \`${found}\`?` };
}
function likelyUnit(value, kind2) {
  const [usual2 = ""] = acceptedUnits(kind2);
  const power = Number(/^1e-?\d+/.exec(usual2)?.[0] ?? 1);
  return value !== 0 && Math.abs(value) < Math.sqrt(power) && power !== 1 ? kinds[kind2].si : usual2;
}
var refuse = (problem) => ({ ok: false, problem });
function wrongNumber(text3, kind2, path) {
  const comma = /^[+-]?\d+,\d+/.exec(text3)?.[0];
  const behind = /^[a-zA-Z. ]+(\d.*)$/.exec(text3)?.[1];
  return refuse({
    code: "not-a-number",
    message: `\`${text3}\` does not begin with a number`,
    allowed: `${kinds[kind2].name}, for example ${exampleOf(kind2)}`,
    ...behind === void 0 ? {} : { hint: `write \`${behind}\` alone` },
    ...comma === void 0 ? {} : {
      hint: `write a decimal point and no thousands mark: \`${comma.replace(",", ".")}\` or \`${comma.replace(",", "")}\``
    },
    path
  });
}
function exampleOf(kind2) {
  const unit2 = acceptedUnits(kind2)[0];
  return bareNumberKinds.has(kind2) && unit2 === void 0 ? "`0.5`" : `\`1 ${unit2 ?? ""}\``;
}
function parseQuantity(input, kind2, path = []) {
  const text3 = typeof input === "number" ? String(input) : input.trim();
  if (text3.length > longestQuantity) {
    return refuse({
      code: "not-a-number",
      message: `a quantity of ${text3.length} characters is too long`,
      allowed: `at most ${longestQuantity} characters`,
      path
    });
  }
  const number7 = splitNumber(text3);
  if (number7 === void 0) return wrongNumber(text3, kind2, path);
  const unitText = text3.slice(number7.length).trim();
  if (/^,\d/.test(unitText)) return wrongNumber(text3, kind2, path);
  if (!Number.isFinite(number7.value)) {
    return refuse({ code: "not-a-number", message: `\`${text3}\` is not a finite number`, path });
  }
  const units2 = acceptedUnits(kind2);
  if (unitText === "" && !bareNumberKinds.has(kind2)) {
    return refuse({
      code: "unit-missing",
      message: `\`${text3}\` has no unit, but ${withDimension(kinds[kind2].name, dimensionOf(kind2))} is needed`,
      allowed: `units: ${units2.join(", ")}`,
      hint: `write for example \`${text3} ${likelyUnit(number7.value, kind2)}\``,
      path
    });
  }
  const within4 = { offset: text3.length - unitText.length, length: Math.max(1, unitText.length) };
  const unit2 = parseUnit(unitText);
  if (unit2 === void 0) {
    return refuse({
      code: "unit-unknown",
      message: `\`${unitText}\` is not a unit`,
      allowed: `units for ${kinds[kind2].name}: ${units2.join(", ")}`,
      ...hintFor(normaliseUnit(unitText), units2),
      within: within4,
      path
    });
  }
  const needed4 = dimensionOf(kind2);
  const plainAngle = kind2 === "angle" && unit2.dimension === "" && unitText === "";
  if (unit2.dimension !== needed4 && !plainAngle) {
    return refuse({
      code: "unit-mismatch",
      message: `\`${unitText}\` is ${whatItIs(unit2)}, but ${withDimension(kinds[kind2].name, needed4)} is needed`,
      allowed: units2.length === 0 ? "a number without unit" : `units: ${units2.join(", ")}`,
      ...degreeHint(unitText, kind2),
      within: within4,
      path
    });
  }
  const value = toKind(number7.value, unit2, kind2);
  if (!Number.isFinite(value))
    return refuse({ code: "not-a-number", message: `\`${text3}\` is too large a number`, path });
  return { ok: true, value };
}
function toSI(value, unitText) {
  const unit2 = parseUnit(unitText);
  if (unit2 === void 0) throw new Error(`unknown unit ${unitText}`);
  return toKind(value, unit2, unit2.dimension === "A1" ? "angle" : unit2.offset === 0 ? "number" : "temperature");
}

// packages/core/src/material/library-models.ts
function entryValues(entry2) {
  return Object.fromEntries(Object.entries(entry2.values).map(([name, { value, unit: unit2 }]) => [name, toSI(value, unit2)]));
}
function entrySources(entry2, names4 = Object.keys(entry2.values)) {
  return uniqueSources(names4.flatMap((name) => entry2.values[name]?.source ?? []));
}
function entryNotes(entry2, names4 = Object.keys(entry2.values)) {
  const caution = entry2.note === void 0 ? [] : [{ level: "warning", text: `${entry2.label}: ${entry2.note}` }];
  const assumed = names4.flatMap((name) => {
    const value = entry2.values[name];
    if (value?.basis !== "assumed") return [];
    const reason = value.note === void 0 ? "" : ` (${value.note})`;
    const text3 = `${entry2.label}: ${name} = ${value.value} ${value.unit}`.trimEnd();
    return [{ level: "assumption", text: `${text3} is assumed${reason}`, source: value.source }];
  });
  return [...caution, ...assumed];
}
function pick(entry2, names4) {
  const given = names4.flatMap((name) => {
    const found = entry2.values[name];
    return found === void 0 ? [] : [[name, toSI(found.value, found.unit)]];
  });
  return { values: Object.fromEntries(given), sources: entrySources(entry2, names4) };
}
function libraryFibre(id) {
  const entry2 = entryOf(library.fibres, id);
  if (entry2 === void 0) return void 0;
  const { values, sources } = pick(entry2, ["E1", "E2", "G12", "nu12", "density", "nu23", "alpha1", "alpha2"]);
  const { E1, E2, G12, nu12, density, ...optional16 } = values;
  if (E1 === void 0 || E2 === void 0 || G12 === void 0 || nu12 === void 0 || density === void 0)
    return void 0;
  return { name: id, E1, E2, G12, nu12, density, ...optional16, sources };
}
function libraryResin(id) {
  const entry2 = entryOf(library.resins, id);
  if (entry2 === void 0) return void 0;
  const { values, sources } = pick(entry2, ["E", "nu", "density", "alpha", "beta"]);
  const { E, nu, density, ...optional16 } = values;
  if (E === void 0 || nu === void 0 || density === void 0) return void 0;
  return { name: id, E, nu, density, ...optional16, sources };
}

// packages/core/src/material/ply-consistency.ts
var toleratedDeparture = 0.08;
var closestPacking = Math.PI / (2 * Math.sqrt(3));
function modulusAt({ fibre: fibre2, resin: resin2, architecture, warpShare = 0.5 }, Vf) {
  const E1 = ruleOfMixtures(fibre2.E1, resin2.E, Vf);
  if (architecture !== "woven") return E1;
  const E2 = halpinTsai(fibre2.E2, resin2.E, Vf, 2);
  const Q = reducedStiffness({ E1, E2, G12: 1, nu12: ruleOfMixtures(fibre2.nu12, resin2.nu, Vf) });
  return constantsFromStiffness(crossPlyStiffness(Q, warpShare)).E1;
}
function fractionFor(E1, claimed) {
  let [low, high] = [0, 1];
  if (!(E1 >= modulusAt(claimed, low) && E1 <= modulusAt(claimed, high))) return void 0;
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2;
    if (modulusAt(claimed, middle) < E1) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
function expectedConstants(claimed) {
  const ud = unidirectionalPly({ ...claimed, arealMass: 1 });
  if (claimed.architecture !== "woven") return { constants: ud, sources: ud.sources };
  const { warpShare = 0.5 } = claimed;
  demand(between("warp share", warpShare, 0, 1));
  const cloth = constantsFromStiffness(crossPlyStiffness(reducedStiffness(ud), warpShare));
  return { constants: cloth, sources: uniqueSources(ud.sources, ["ishikawa-chou-1982"]) };
}
var rounded = (value, digits) => shown(Number(value.toPrecision(digits)));
function doubt(name, E1, claimed, needed4) {
  const { fibreVolumeFraction: Vf, architecture } = claimed;
  const rule = architecture === "woven" ? "the cross-ply of its constituents (before crimp)" : "the rule of mixtures";
  const percent5 = `${E1.departure > 0 ? "+" : ""}${(E1.departure * 100).toFixed(1)} %`;
  const reproduced = needed4 === void 0 ? "no fibre fraction would give the listed value" : `the listed value needs ${rounded(needed4, 3)}${needed4 > closestPacking ? ", more than round fibres can pack" : ""}`;
  return {
    level: "warning",
    text: `${name}: E1 = ${rounded(E1.given / 1e9, 4)} GPa, but ${rule} gives ${rounded(E1.expected / 1e9, 4)} GPa (${percent5}) at fibre volume fraction ${shown(Vf)}; ${reproduced}; use the row as one data set and do not rescale it`
  };
}
function plyConsistency(listed4, claimed) {
  demand(...["E1", "E2", "G12"].map((key) => positive(key, listed4[key], "Pa")));
  const { fibre: fibre2, resin: resin2, fibreVolumeFraction: Vf } = claimed;
  const architecture = choice("architecture", claimed.architecture ?? "ud", ["ud", "woven"]);
  const { constants: constants3, sources } = expectedConstants(claimed);
  const against2 = (key) => ({
    given: listed4[key],
    expected: constants3[key],
    departure: constants3[key] / listed4[key] - 1
  });
  const E1 = against2("E1");
  const consistent = Math.abs(E1.departure) <= toleratedDeparture;
  const needed4 = fractionFor(listed4.E1, claimed);
  const fibreModulus = architecture === "woven" ? void 0 : (listed4.E1 - resin2.E * (1 - Vf)) / Vf;
  return {
    E1,
    E2: against2("E2"),
    G12: against2("G12"),
    consistent,
    ...needed4 !== void 0 && { fibreVolumeFractionNeeded: needed4 },
    ...fibreModulus !== void 0 && fibreModulus > 0 && { fibreModulusNeeded: fibreModulus },
    notes: consistent ? [] : [doubt(listed4.name ?? `ply of ${fibre2.name}`, E1, claimed, needed4)],
    sources
  };
}

// packages/core/src/laminate/diagnosis-statements.ts
function percent(ratio) {
  if (ratio === 0) return "0 %";
  return ratio < 1e-3 ? "under 0.1 %" : `${Number((100 * ratio).toPrecision(3))} %`;
}
function diagnosisStatements(d, units2 = "metric") {
  return [
    symmetry(d),
    balance(d),
    direction(d),
    d.quasiIsotropic ? "quasi-isotropic in plane: A is that of an isotropic sheet" : `not quasi-isotropic: A departs from that of an isotropic sheet by ${percent(d.measures.anisotropy)}`,
    d.homogenised ? "homogenised: 12 D/t\xB3 equals A/t, so bending does not depend on the order of the plies" : `not homogenised: 12 D/t\xB3 departs from A/t by ${percent(d.measures.inhomogeneity)}`,
    bendTwist(d),
    tenPercent(d),
    ...d.largestBlock === void 0 ? [] : [block(d.largestBlock, units2)],
    `largest angle between neighbouring plies: ${plain3(d.largestAngleJump)}\xB0`
  ];
}
function symmetry({ symmetric: symmetric3, antisymmetric, uncoupled, measures }) {
  if (symmetric3) return "symmetric: every ply has its mirror image, the coupling B is zero";
  const coupling2 = uncoupled ? "the coupling B is zero all the same" : `the coupling B reaches ${percent(measures.coupling)} of what a laminate with all its stiffness in one half would have`;
  const unmirrored = `${percent(measures.unmirroredShare)} of the thickness lacks its mirror image`;
  return antisymmetric ? `antisymmetric: ${coupling2}` : `not symmetric: ${unmirrored}, ${coupling2}`;
}
function balance({ balanced, measures }) {
  if (balanced) return "balanced: every off-axis ply has its opposite, A16 and A26 are zero";
  const share2 = `${percent(measures.unbalancedShare)} of the thickness is off axis without its opposite`;
  return `not balanced: ${share2}, A16 and A26 reach ${percent(measures.shearCoupling)} of the larger of A11 and A22`;
}
function direction({ crossPly, anglePly, measures }) {
  if (crossPly) return "cross-ply: all fibres run along 0\xB0 and 90\xB0";
  const share2 = `fibres in ${percent(measures.offAxisShare)} of the thickness run along neither 0\xB0 nor 90\xB0`;
  return anglePly ? "angle-ply: all fibres run along one angle and its opposite" : `not cross-ply: ${share2}`;
}
function bendTwist({ measures }) {
  return measures.bendTwist < 1e-6 ? "bending does not twist: D16 and D26 are zero" : `bending twists: D16 and D26 reach ${percent(measures.bendTwist)} of the larger of D11 and D22`;
}
function tenPercent({ tenPercentRule, directionShares: directionShares2, measures }) {
  const least2 = directionShares2.find(({ share: share3 }) => share3 === measures.leastDirectionShare);
  const share2 = `the least, along ${plain3(least2?.angle ?? 0)}\xB0, is ${percent(measures.leastDirectionShare)}`;
  return `ten-percent rule ${tenPercentRule ? "kept" : "missed"}: of the shares along 0\xB0, 45\xB0, -45\xB0 and 90\xB0 ${share2}`;
}
function block({ count, thickness, angle: angle2 }, units2) {
  const plies2 = count === 1 ? "1 ply" : `${count} plies`;
  return `largest block of one angle: ${plies2} at ${plain3(angle2)}\xB0, ${formatQuantity(thickness, "length", { units: units2 })}`;
}
function plain3(value) {
  return String(Number(value.toPrecision(4)));
}

// packages/core/src/numeric/banded.ts
function factorBanded(K, n, band3, from = 0) {
  const stride3 = band3 + 1;
  if (band3 === 3) return factorThree(K, n, from);
  let negative = 0;
  for (let i = from; i < n; i++) {
    const p2 = i * stride3;
    for (let back = Math.min(band3, i); back > 0; back--) {
      const q = p2 - back * stride3;
      const l = K[q + back] * K[q];
      for (let r = back; r <= band3; r++) K[p2 + r - back] = K[p2 + r - back] - l * K[q + r];
    }
    const pivot = K[p2];
    if (!(pivot < 0 || pivot > 0) || pivot - pivot !== 0) return -1;
    if (pivot < 0) negative++;
    K[p2] = 1 / pivot;
  }
  return negative;
}
function factorThree(K, n, from) {
  let negative = 0;
  const row = (back, entry2) => from >= back ? K[4 * (from - back) + entry2] : 0;
  let [ia, a1, a2, a3] = [row(1, 0), row(1, 1), row(1, 2), row(1, 3)];
  let [ib, b2, b3] = [row(2, 0), row(2, 2), row(2, 3)];
  let [ic, c3] = [row(3, 0), row(3, 3)];
  const end2 = 4 * n;
  for (let p2 = 4 * from; p2 < end2; p2 += 4) {
    const la = a1 * ia;
    const lb = b2 * ib;
    const pivot = K[p2] - a1 * la - b2 * lb - c3 * c3 * ic;
    if (!(pivot < 0 || pivot > 0) || pivot - pivot !== 0) return -1;
    if (pivot < 0) negative++;
    const one = K[p2 + 1] - a2 * la - b3 * lb;
    const two = K[p2 + 2] - a3 * la;
    K[p2 + 1] = one;
    K[p2 + 2] = two;
    ic = ib;
    c3 = b3;
    ib = ia;
    b2 = a2;
    b3 = a3;
    ia = 1 / pivot;
    K[p2] = ia;
    a1 = one;
    a2 = two;
    a3 = K[p2 + 3];
  }
  return negative;
}
function solveBanded(K, n, band3, x, from = 0, to = 0) {
  const stride3 = band3 + 1;
  for (let i = from, p2 = from * stride3; i < n; i++, p2 += stride3) {
    const value = x[i] * K[p2];
    for (let r = 1; r <= band3; r++) x[i + r] = x[i + r] - K[p2 + r] * value;
  }
  if (band3 === 3) {
    backThree(K, n, x, to);
    return;
  }
  for (let i = n - 1, p2 = i * stride3; i >= to; i--, p2 -= stride3) {
    let sum5 = x[i];
    for (let r = 1; r <= band3; r++) sum5 -= K[p2 + r] * x[i + r];
    x[i] = sum5 * K[p2];
  }
}
function backThree(K, n, x, to) {
  let [a, b, c] = [0, 0, 0];
  for (let i = n - 1, p2 = 4 * i; i >= to; i--, p2 -= 4) {
    const value = (x[i] - K[p2 + 1] * a - K[p2 + 2] * b - K[p2 + 3] * c) * K[p2];
    x[i] = value;
    c = b;
    b = a;
    a = value;
  }
}

// packages/core/src/numeric/chain.ts
function solveChain(size4, left4, first2, links, last) {
  const m = size4;
  const width = 2 * m + 1;
  const rows = left4 + m;
  const block2 = m * width;
  const count = links.length / block2;
  const w = new Float64Array(rows * width);
  const filled = new Int32Array(width);
  spread(first2, w, 0, left4, m);
  for (let link = 0; link < count; link++) {
    const from = link * block2;
    for (let i = 0; i < block2; i++) w[left4 * width + i] = links[from + i];
    if (!eliminate(w, rows, m, width, filled)) return void 0;
    for (let i = 0; i < block2; i++) links[from + i] = w[i];
    for (let i = 0; i < left4; i++) {
      const to = i * width;
      const row = (m + i) * width;
      for (let j = 0; j < m; j++) {
        w[to + j] = w[row + m + j];
        w[to + m + j] = 0;
      }
      w[to + 2 * m] = w[row + 2 * m];
    }
  }
  spread(last, w, left4, m - left4, m);
  if (!eliminate(w, m, m, width, filled)) return void 0;
  const x = new Float64Array((count + 1) * m);
  const at4 = count * m;
  for (let i = m - 1; i >= 0; i--) {
    const row = i * width;
    let rest = w[row + 2 * m];
    for (let j = i + 1; j < m; j++) rest -= w[row + j] * x[at4 + j];
    x[at4 + i] = rest / w[row + i];
  }
  for (let link = count - 1; link >= 0; link--) {
    const near5 = link * m;
    for (let i = m - 1; i >= 0; i--) {
      const row = link * block2 + i * width;
      let rest = links[row + 2 * m];
      for (let j = i + 1; j < 2 * m; j++) rest -= links[row + j] * x[near5 + j];
      x[near5 + i] = rest / links[row + i];
    }
  }
  return x;
}
function spread(from, to, start, rows, m) {
  for (let i = 0; i < rows; i++) {
    const row = (start + i) * (2 * m + 1);
    for (let j = 0; j < m; j++) {
      to[row + j] = from[i * (m + 1) + j];
      to[row + m + j] = 0;
    }
    to[row + 2 * m] = from[i * (m + 1) + m];
  }
}
function eliminate(w, rows, m, width, filled) {
  for (let k = 0; k < m; k++) {
    let best = k;
    let most5 = Math.abs(w[k * width + k]);
    for (let i = k + 1; i < rows; i++) {
      const here = Math.abs(w[i * width + k]);
      if (here > most5) {
        best = i;
        most5 = here;
      }
    }
    if (!(most5 > 0 && most5 < Number.POSITIVE_INFINITY)) return false;
    const pivotRow = k * width;
    if (best !== k) {
      const other = best * width;
      for (let j = k; j < width; j++) {
        const swap = w[pivotRow + j];
        w[pivotRow + j] = w[other + j];
        w[other + j] = swap;
      }
    }
    const pivot = w[pivotRow + k];
    let count = 0;
    for (let j = k + 1; j < width; j++) if (w[pivotRow + j] !== 0) filled[count++] = j;
    for (let i = k + 1; i < rows; i++) {
      const row = i * width;
      const entry2 = w[row + k];
      if (entry2 === 0) continue;
      const factor = entry2 / pivot;
      for (let c = 0; c < count; c++) {
        const j = filled[c];
        w[row + j] = w[row + j] - factor * w[pivotRow + j];
      }
    }
  }
  return true;
}

// packages/core/src/numeric/boundary-value.ts
var mostRounds = 30;
var enough = 3e-5;
function solveBoundaryValue(problem, steps, guess) {
  const { size: m, left: left4 } = problem;
  const z15 = guess.slice();
  const first2 = zeros(left4 * (m + 1));
  const last = zeros((m - left4) * (m + 1));
  const links = new Float64Array(steps.length * m * (2 * m + 1));
  const scratch = allocate(problem, z15);
  for (let round = 0; round < mostRounds; round++) {
    assemble(problem, steps, z15, scratch, first2, links, last);
    const change = solveChain(m, left4, first2, links, last);
    if (change === void 0) return void 0;
    let largest5 = 0;
    for (let i = 0; i < z15.length; i++) {
      const size4 = Math.abs(change[i]) / (1 + Math.abs(z15[i]));
      if (size4 <= largest5) continue;
      if (!Number.isFinite(size4)) return void 0;
      largest5 = size4;
    }
    const share2 = largest5 > 1 ? 1 / largest5 : 1;
    for (let i = 0; i < z15.length; i++) z15[i] = z15[i] + share2 * change[i];
    if (largest5 < enough) return z15;
  }
  return void 0;
}
var zeros = (count) => new Array(count).fill(0);
function allocate({ size: m, slope }, z15) {
  const vector3 = () => zeros(m);
  const table4 = () => zeros(m * m);
  const written = new Array(m * m).fill(Number.NaN);
  slope(z15, 0, vector3(), written);
  const columns = [];
  const end2 = [];
  for (let i = 0; i < m; i++) {
    for (let j = 0; j < m; j++) if (!Number.isNaN(written[i * m + j])) columns.push(j);
    end2.push(columns.length);
  }
  return {
    near: vector3(),
    middle: vector3(),
    residual: vector3(),
    f0: vector3(),
    fm: vector3(),
    f1: vector3(),
    jumped: table4(),
    J0: table4(),
    Jm: table4(),
    J1: table4(),
    edge: table4(),
    P: vector3(),
    columns: Int32Array.from(columns),
    end: Int32Array.from(end2)
  };
}
function assemble(problem, steps, z15, s, first2, links, last) {
  const { size: m, left: left4 } = problem;
  s.edge.fill(0);
  problem.first(z15, 0, s.residual, s.edge);
  writeEdge(m, left4, s, first2);
  problem.slope(z15, 0, s.f1, s.J1);
  for (let k = 0; k < steps.length; k++) {
    const at4 = k * m;
    for (let i = 0; i < m; i++) s.near[i] = z15[at4 + i];
    s.jumped.fill(0);
    for (let i = 0; i < m; i++) s.jumped[i * m + i] = 1;
    const jumps = problem.jump(k, s.near, s.jumped);
    if (jumps) problem.slope(s.near, 0, s.f0, s.J0);
    else copy(s);
    problem.slope(z15, at4 + m, s.f1, s.J1);
    writeLink(problem, s, steps[k], z15, at4 + m, links, k * m * (2 * m + 1), jumps);
  }
  s.edge.fill(0);
  problem.last(z15, z15.length - m, s.residual, s.edge);
  writeEdge(m, m - left4, s, last);
}
function copy({ f0, f1, J0, J1 }) {
  for (let i = 0; i < f1.length; i++) f0[i] = f1[i];
  for (let i = 0; i < J1.length; i++) J0[i] = J1[i];
}
function writeLink(problem, s, h, z15, far, links, to, jumps) {
  const { size: m } = problem;
  const { near: near5, middle, f0, fm, f1, J0, Jm, J1, P, jumped, columns, end: end2 } = s;
  for (let i = 0; i < m; i++) middle[i] = (near5[i] + z15[far + i]) / 2 + h / 8 * (f0[i] - f1[i]);
  problem.slope(middle, 0, fm, Jm);
  const width = 2 * m + 1;
  const sixth = h / 6;
  const product2 = sixth * h / 2;
  links.fill(0, to, to + m * width);
  for (let i = 0; i < m; i++) {
    const row = to + i * width;
    for (let c = i > 0 ? end2[i - 1] : 0; c < end2[i]; c++) {
      const l = columns[c];
      const il = i * m + l;
      const middleSlope = Jm[il];
      const twice = 2 * middleSlope;
      links[row + l] = links[row + l] - sixth * (J0[il] + twice);
      links[row + m + l] = links[row + m + l] - sixth * (J1[il] + twice);
      for (let d = l > 0 ? end2[l - 1] : 0; d < end2[l]; d++) {
        const j = columns[d];
        links[row + j] = links[row + j] - product2 * middleSlope * J0[l * m + j];
        links[row + m + j] = links[row + m + j] + product2 * middleSlope * J1[l * m + j];
      }
    }
    links[row + i] = links[row + i] - 1;
    links[row + m + i] = links[row + m + i] + 1;
    links[row + 2 * m] = near5[i] + sixth * (f0[i] + 4 * fm[i] + f1[i]) - z15[far + i];
  }
  if (!jumps) return;
  for (let i = 0; i < m; i++) {
    const row = to + i * width;
    for (let j = 0; j < m; j++) P[j] = links[row + j];
    for (let j = 0; j < m; j++) {
      let sum5 = 0;
      for (let l = 0; l < m; l++) sum5 += P[l] * jumped[l * m + j];
      links[row + j] = sum5;
    }
  }
}
function writeEdge(m, rows, s, out) {
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < m; j++) out[i * (m + 1) + j] = s.edge[i * m + j];
    out[i * (m + 1) + m] = -s.residual[i];
  }
}

// packages/core/src/numeric/cholesky.ts
import { CholeskyDecomposition } from "ml-matrix";
function choleskyOf(m) {
  if (!m.to2DArray().every((row) => row.every(Number.isFinite))) return void 0;
  const factors2 = new CholeskyDecomposition(m);
  return factors2.isPositiveDefinite() ? factors2 : void 0;
}

// packages/core/src/numeric/degrees.ts
function sinCosDegrees(degrees) {
  const quarters = Math.round(degrees / 90);
  const rest = degrees - 90 * quarters;
  const radians = rest * (Math.PI / 180);
  let sin = Math.sin(radians);
  let cos = Math.cos(radians);
  if (rest === 45 || rest === -45) {
    cos = Math.SQRT1_2;
    sin = rest > 0 ? cos : -cos;
  }
  const turns = quarters - 4 * Math.floor(quarters / 4);
  if (turns === 0) return { sin: sin + 0, cos };
  if (turns === 1) return { sin: cos, cos: 0 - sin };
  if (turns === 2) return { sin: 0 - sin, cos: 0 - cos };
  return { sin: 0 - cos, cos: sin + 0 };
}
function sinDegrees(degrees) {
  return sinCosDegrees(degrees).sin;
}
function cosDegrees(degrees) {
  return sinCosDegrees(degrees).cos;
}
function fibreAngle(degrees) {
  const rest = degrees % 180;
  if (rest > 90) return rest - 180;
  if (rest <= -90) return rest + 180;
  return rest + 0;
}

// packages/core/src/numeric/quantile.ts
function quantile(sorted, share2) {
  const place = share2 * (sorted.length - 1);
  const below = Math.floor(place);
  const first2 = sorted[below];
  const second2 = sorted[Math.min(below + 1, sorted.length - 1)];
  return first2 + (place - below) * (second2 - first2);
}

// packages/core/src/numeric/random.ts
var rotated = (x, k) => x << k | x >>> 32 - k;
function wordsFrom(state) {
  let [a, b, c, d] = state;
  return {
    next: () => {
      const word = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
      const t = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= t;
      d = rotated(d, 11);
      return word;
    },
    state: () => [a, b, c, d]
  };
}
function spread2(seed) {
  const word = (k) => {
    let x = seed + Math.imul(k, 2654435769) | 0;
    x = Math.imul(x ^ x >>> 16, 2246822507);
    x = Math.imul(x ^ x >>> 13, 3266489909);
    return x ^ x >>> 16;
  };
  return [word(1), word(2), word(3), word(4)];
}
function randomGenerator(start) {
  const { next, state } = wordsFrom(typeof start === "number" ? spread2(start) : start);
  return { random: () => (next() + 0.5) / 2 ** 32, state };
}
function uniformRandom(seed) {
  return randomGenerator(seed).random;
}

// packages/core/src/numeric/root-between.ts
function rootBetween(f, low, high, tolerance2 = 1e-13) {
  let [a, b] = [high, low];
  let [fa, fb] = [f(a), f(b)];
  if (fa * fb >= 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  let t = 0.5;
  for (let round = 0; round < 200; round++) {
    const x = a + t * (b - a);
    const fx = f(x);
    const sameSide = fx > 0 === fa > 0;
    const [c, fc] = sameSide ? [a, fa] : [b, fb];
    if (!sameSide) [b, fb] = [a, fa];
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const share2 = tolerance2 * Math.max(Math.abs(a), Math.abs(b)) / Math.abs(b - a);
    if (fx === 0 || !(share2 < 0.5)) return fx === 0 ? x : best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const smooth2 = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    t = smooth2 ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
    t = Math.min(1 - share2, Math.max(share2, t));
  }
  return a;
}

// packages/core/src/numeric/spd3.ts
function invertSpd3(m, from, out, to) {
  const m12 = m[from + 1];
  const m13 = m[from + 2];
  const d1 = m[from];
  if (!(d1 > 0)) return false;
  const r1 = 1 / d1;
  const l21 = m12 * r1;
  const l31 = m13 * r1;
  const d2 = m[from + 3] - l21 * m12;
  if (!(d2 > 0)) return false;
  const e = m[from + 4] - l31 * m12;
  const r2 = 1 / d2;
  const l32 = e * r2;
  const d3 = m[from + 5] - l31 * m13 - l32 * e;
  if (!(d3 > 0 && d1 + d2 + d3 < Number.POSITIVE_INFINITY)) return false;
  const k31 = l21 * l32 - l31;
  const r3 = 1 / d3;
  const s31 = k31 * r3;
  out[to] = r1 + l21 * l21 * r2 + k31 * s31;
  out[to + 1] = -l21 * r2 - l32 * s31;
  out[to + 2] = s31;
  out[to + 3] = r2 + l32 * l32 * r3;
  out[to + 4] = -l32 * r3;
  out[to + 5] = r3;
  return true;
}

// packages/core/src/laminate/fibre-directions.ts
function fibreDirections(ply3) {
  if (ply3.core || isIsotropic(ply3)) return [];
  const angle2 = fibreAngle(ply3.angle);
  return isCloth(ply3) ? [angle2, fibreAngle(ply3.angle + 90)].sort((a, b) => a - b) : [angle2];
}
function isCloth(ply3) {
  return !ply3.core && Math.min(ply3.E1, ply3.E2) >= Math.max(ply3.E1, ply3.E2) / 2 && !isIsotropic(ply3);
}
function isIsotropic({ E1, E2, G12, nu12 }) {
  const near5 = (value, other) => Math.abs(value - other) <= 0.01 * Math.abs(other);
  return near5(E1, E2) && near5(G12, E1 / (2 * (1 + nu12)));
}
function angleBetween(one, other) {
  return Math.abs(fibreAngle(one - other));
}

// packages/core/src/laminate/matrix3.ts
function symmetric(packed3, at4 = 0) {
  const [m11, m12, m16, m22, m26, m66] = six(packed3, at4);
  return [
    [m11, m12, m16],
    [m12, m22, m26],
    [m16, m26, m66]
  ];
}
function full(packed3, at4 = 0) {
  const row = (i) => Array.from({ length: 3 }, (_, j) => packed3[at4 + 3 * i + j] ?? 0);
  return [row(0), row(1), row(2)];
}
function packed(m) {
  return Float64Array.of(
    entry(m, 0, 0),
    entry(m, 0, 1),
    entry(m, 0, 2),
    entry(m, 1, 1),
    entry(m, 1, 2),
    entry(m, 2, 2)
  );
}
function inverse(m) {
  const out = new Float64Array(6);
  invertSpd3(packed(m), 0, out, 0);
  return symmetric(out);
}
function entry(m, i, j) {
  return m[i]?.[j] ?? 0;
}
function largest(m) {
  return Math.max(...m.flat().map(Math.abs));
}
function six(packed3, at4) {
  const k = (i) => packed3[at4 + i] ?? 0;
  return [k(0), k(1), k(2), k(3), k(4), k(5)];
}

// packages/core/src/laminate/kernel-layout.ts
var layout = {
  A: 0,
  B: 6,
  D: 12,
  a: 18,
  b: 24,
  d: 33,
  inPlane: 39,
  flexural: 46,
  thickness: 53,
  condition: 54
};
var STRIDE = 55;
var LOAD_STRIDE = 6;
var ROW = 6;
function allocateBatch(laminates, plies2, qbarTable, strength) {
  for (const [name, value] of Object.entries({ laminates, plies: plies2 })) {
    if (!(Number.isSafeInteger(value) && value >= 0)) {
      fail({
        code: "out-of-range",
        message: `the number of ${name} is ${value}`,
        allowed: "a whole number, 0 or more"
      });
    }
  }
  const ratios = strength === void 0 ? 0 : laminates * (strength.loads.length / LOAD_STRIDE);
  return {
    batch: {
      plyOffsets: new Int32Array(laminates + 1),
      row: new Int32Array(plies2),
      thickness: new Float64Array(plies2),
      qbarTable,
      ...strength === void 0 ? {} : { strength }
    },
    out: {
      values: new Float64Array(laminates * STRIDE),
      status: new Uint8Array(laminates),
      ...strength === void 0 ? {} : { ratio: new Float64Array(ratios), weakest: new Int32Array(ratios) }
    }
  };
}

// packages/core/src/laminate/check-finite.ts
function checkFinite(name, values) {
  for (let i = 0; i < values.length; i++) {
    if (Number.isFinite(values[i])) continue;
    fail({ code: "not-a-number", message: `entry ${i} of \`${name}\` is ${values[i]}`, allowed: "finite numbers" });
  }
}

// packages/core/src/laminate/qbar.ts
function makeQbarTable(materials, angles, table4 = new Float64Array(materials.length * angles.length * ROW)) {
  const needed4 = materials.length * angles.length * ROW;
  if (table4.length < needed4) {
    fail({
      code: "out-of-range",
      message: `\`table\` has ${table4.length} entries, ${materials.length} materials at ${angles.length} angles need ${needed4}`,
      allowed: `${needed4} entries or more`
    });
  }
  checkFinite("angles", angles);
  let at4 = 0;
  for (const material2 of materials) {
    checkFinite("materials", [material2.E1, material2.E2, material2.G12, material2.nu12]);
    const u = stiffnessInvariants(reducedStiffness(material2));
    for (const angle2 of angles) {
      writeQbar(u, angle2, table4, at4);
      at4 += ROW;
    }
  }
  return table4;
}
function tabulateQbar(plies2) {
  const rows = /* @__PURE__ */ new Map();
  const distinct2 = [];
  const row = new Int32Array(plies2.length);
  plies2.forEach((ply3, k) => {
    const key = `${ply3.E1} ${ply3.E2} ${ply3.G12} ${ply3.nu12} ${ply3.angle}`;
    let found = rows.get(key);
    if (found === void 0) {
      found = distinct2.length;
      rows.set(key, found);
      distinct2.push(ply3);
    }
    row[k] = found;
  });
  const qbarTable = new Float64Array(distinct2.length * ROW);
  distinct2.forEach((ply3, r) => {
    writeQbar(stiffnessInvariants(reducedStiffness(ply3)), ply3.angle, qbarTable, r * ROW);
  });
  return { qbarTable, row };
}
function writeQbar(u, angle2, table4, at4) {
  const { sin: s, cos: c } = sinCosDegrees(2 * angle2);
  const fourth = u.U3 * (c - s) * (c + s);
  const fourthSine = u.U3 * 2 * s * c;
  const second2 = u.U2 * c;
  const halfSecond = u.U2 * s / 2;
  table4[at4] = u.U1 + second2 + fourth;
  table4[at4 + 1] = u.U4 - fourth;
  table4[at4 + 2] = halfSecond + fourthSine;
  table4[at4 + 3] = u.U1 - second2 + fourth;
  table4[at4 + 4] = halfSecond - fourthSine;
  table4[at4 + 5] = u.U5 - fourth;
}

// packages/core/src/laminate/stack-layer.ts
var near = (value, other, scale) => Math.abs(value - other) <= 1e-9 * scale;
var flipped = [1, 1, -1, 1, -1, 1];
var kept = [1, 1, 1, 1, 1, 1];
function sameStiffness(one, other, signs) {
  const scale = Math.max(...one.stiffness.map(Math.abs));
  return one.stiffness.every((value, i) => near(value, (signs[i] ?? 1) * (other.stiffness[i] ?? 0), scale));
}
function sameKind(one, other) {
  const [e, f] = [one.ply.expansion, other.ply.expansion];
  const scale = Math.max(...[e?.alpha1, e?.alpha2].map((a) => Math.abs(a ?? 0)));
  const expands = e === f || e !== void 0 && f !== void 0 && near(e.alpha1, f.alpha1, scale) && near(e.alpha2, f.alpha2, scale);
  return expands && near(one.thickness, other.thickness, one.thickness);
}
function alike(layer, other) {
  return other !== void 0 && sameKind(layer, other) && sameStiffness(layer, other, kept);
}
function opposite(layer, other) {
  return other !== void 0 && sameKind(layer, other) && sameStiffness(layer, other, flipped);
}
function crossed(layer, other) {
  if (other === void 0 || !sameKind(layer, other)) return false;
  const [q11 = 0, q12 = 0, , q22 = 0, , q66 = 0] = other.stiffness;
  return sameStiffness(layer, { ...other, stiffness: [q22, q12, 0, q11, 0, q66] }, kept);
}

// packages/core/src/laminate/stack-pattern.ts
function stackPattern(laminate2) {
  const { qbarTable, row } = tabulateQbar(laminate2.plies);
  const layers = laminate2.plies.map((ply3, k) => {
    const at4 = (row[k] ?? 0) * ROW;
    const stiffness2 = [...qbarTable.subarray(at4, at4 + ROW)];
    return { ply: ply3, thickness: ply3.thickness, stiffness: stiffness2, directions: fibreDirections(ply3) };
  });
  const share2 = (picked) => total(picked) / laminate2.thickness;
  const mirror = (k) => layers[layers.length - 1 - k];
  const angles = new Set(layers.flatMap((layer) => layer.directions));
  const block2 = largestBlock(layers);
  return {
    unmirroredShare: share2(layers.filter((layer, k) => !alike(layer, mirror(k)))),
    antisymmetric: layers.every((layer, k) => opposite(layer, mirror(k))) || isWithin(angles, [0, 90]) && layers.every((layer, k) => crossed(layer, mirror(k))),
    unbalancedShare: unbalanced(layers) / laminate2.thickness,
    offAxisShare: fibresAlong(layers, (angle2) => angle2 !== 0 && angle2 !== 90) / laminate2.thickness,
    anglePly: isAnglePly(angles),
    directionShares: directionShares(layers),
    ...block2 === void 0 ? {} : { largestBlock: block2 },
    largestAngleJump: largestJump(layers)
  };
}
var total = (layers) => layers.reduce((sum5, layer) => sum5 + layer.thickness, 0);
function unbalanced(layers) {
  const kinds2 = [];
  for (const layer of layers) {
    const scale = 1e-9 * Math.max(...layer.stiffness.map(Math.abs));
    if (Math.max(Math.abs(layer.stiffness[2] ?? 0), Math.abs(layer.stiffness[4] ?? 0)) <= scale) continue;
    const same4 = kinds2.find((kind2) => sameStiffness(layer, kind2.layer, kept));
    const other = kinds2.find((kind2) => sameStiffness(layer, kind2.layer, flipped));
    if (same4) same4.left += layer.thickness;
    else if (other) other.left -= layer.thickness;
    else kinds2.push({ layer, left: layer.thickness });
  }
  const rest = kinds2.reduce((sum5, kind2) => sum5 + Math.abs(kind2.left), 0);
  return rest <= 1e-9 * total(layers) ? 0 : rest;
}
function fibresAlong(layers, wanted) {
  return layers.reduce((sum5, { directions, thickness }) => {
    return sum5 + (directions.length === 0 ? 0 : thickness * directions.filter(wanted).length / directions.length);
  }, 0);
}
function isWithin(angles, allowed) {
  return angles.size > 0 && [...angles].every((angle2) => allowed.includes(angle2));
}
function isAnglePly(angles) {
  const [one = 0, other = 0] = angles;
  return angles.size === 2 && near(one, -other, 90);
}
function directionShares(layers) {
  const mats = layers.filter(({ ply: ply3 }) => !ply3.core && isIsotropic(ply3));
  const all = total(layers.filter(({ ply: ply3 }) => !ply3.core));
  return [0, 45, -45, 90].map((angle2) => ({
    angle: angle2,
    share: all === 0 ? 0 : (fibresAlong(layers, (other) => near(angle2, other, 90)) + total(mats) / 4) / all
  }));
}
function largestBlock(layers) {
  let best;
  let open;
  for (const { directions, thickness, ply: ply3 } of layers) {
    if (directions.length === 0) {
      open = void 0;
      continue;
    }
    const goes = open !== void 0 && open.directions.join() === directions.join();
    open = {
      count: (goes ? open?.count ?? 0 : 0) + 1,
      thickness: (goes ? open?.thickness ?? 0 : 0) + thickness,
      directions
    };
    const angle2 = directions[0] ?? ply3.angle;
    if (best === void 0 || open.thickness > best.thickness)
      best = { count: open.count, thickness: open.thickness, angle: angle2 };
  }
  return best;
}
function largestJump(layers) {
  let largest5 = 0;
  layers.forEach(({ directions }, k) => {
    const next = layers[k + 1]?.directions ?? [];
    if (directions.length === 0 || next.length === 0) return;
    const apart2 = directions.flatMap((angle2) => next.map((other) => angleBetween(angle2, other)));
    largest5 = Math.max(largest5, Math.min(...apart2));
  });
  return largest5;
}

// packages/core/src/laminate/kernel-inverse.ts
function invertStiffness(v, at4, t) {
  const atA = at4 + layout.a;
  const atB = at4 + layout.b;
  const atD = at4 + layout.d;
  if (!(t > 0 && invertSpd3(v, at4 + layout.A, v, atA))) return false;
  const r = 1 / t;
  const A11 = v[at4];
  const A12 = v[at4 + 1];
  const A16 = v[at4 + 2];
  const A22 = v[at4 + 3];
  const A26 = v[at4 + 4];
  const A66 = v[at4 + 5];
  const B11 = v[at4 + 6] * r;
  const B12 = v[at4 + 7] * r;
  const B16 = v[at4 + 8] * r;
  const B22 = v[at4 + 9] * r;
  const B26 = v[at4 + 10] * r;
  const B66 = v[at4 + 11] * r;
  const rr = r * r;
  const D11 = v[at4 + 12] * rr;
  const D12 = v[at4 + 13] * rr;
  const D16 = v[at4 + 14] * rr;
  const D22 = v[at4 + 15] * rr;
  const D26 = v[at4 + 16] * rr;
  const D66 = v[at4 + 17] * rr;
  const i11 = v[atA];
  const i12 = v[atA + 1];
  const i16 = v[atA + 2];
  const i22 = v[atA + 3];
  const i26 = v[atA + 4];
  const i66 = v[atA + 5];
  const X11 = i11 * B11 + i12 * B12 + i16 * B16;
  const X12 = i11 * B12 + i12 * B22 + i16 * B26;
  const X13 = i11 * B16 + i12 * B26 + i16 * B66;
  const X21 = i12 * B11 + i22 * B12 + i26 * B16;
  const X22 = i12 * B12 + i22 * B22 + i26 * B26;
  const X23 = i12 * B16 + i22 * B26 + i26 * B66;
  const X31 = i16 * B11 + i26 * B12 + i66 * B16;
  const X32 = i16 * B12 + i26 * B22 + i66 * B26;
  const X33 = i16 * B16 + i26 * B26 + i66 * B66;
  v[atD] = D11 - (B11 * X11 + B12 * X21 + B16 * X31);
  v[atD + 1] = D12 - (B11 * X12 + B12 * X22 + B16 * X32);
  v[atD + 2] = D16 - (B11 * X13 + B12 * X23 + B16 * X33);
  v[atD + 3] = D22 - (B12 * X12 + B22 * X22 + B26 * X32);
  v[atD + 4] = D26 - (B12 * X13 + B22 * X23 + B26 * X33);
  v[atD + 5] = D66 - (B16 * X13 + B26 * X23 + B66 * X33);
  if (!invertSpd3(v, atD, v, atD)) return false;
  const d11 = v[atD];
  const d12 = v[atD + 1];
  const d16 = v[atD + 2];
  const d22 = v[atD + 3];
  const d26 = v[atD + 4];
  const d66 = v[atD + 5];
  const Y11 = X11 * d11 + X12 * d12 + X13 * d16;
  const Y12 = X11 * d12 + X12 * d22 + X13 * d26;
  const Y13 = X11 * d16 + X12 * d26 + X13 * d66;
  const Y21 = X21 * d11 + X22 * d12 + X23 * d16;
  const Y22 = X21 * d12 + X22 * d22 + X23 * d26;
  const Y23 = X21 * d16 + X22 * d26 + X23 * d66;
  const Y31 = X31 * d11 + X32 * d12 + X33 * d16;
  const Y32 = X31 * d12 + X32 * d22 + X33 * d26;
  const Y33 = X31 * d16 + X32 * d26 + X33 * d66;
  const a11 = i11 + (Y11 * X11 + Y12 * X12 + Y13 * X13);
  const a12 = i12 + (Y11 * X21 + Y12 * X22 + Y13 * X23);
  const a16 = i16 + (Y11 * X31 + Y12 * X32 + Y13 * X33);
  const a22 = i22 + (Y21 * X21 + Y22 * X22 + Y23 * X23);
  const a26 = i26 + (Y21 * X31 + Y22 * X32 + Y23 * X33);
  const a66 = i66 + (Y31 * X31 + Y32 * X32 + Y33 * X33);
  const { abs } = Math;
  const b1 = abs(B11) + abs(B12) + abs(B16);
  const b2 = abs(B12) + abs(B22) + abs(B26);
  const b6 = abs(B16) + abs(B26) + abs(B66);
  const norm = largest2(
    largest2(
      abs(A11) + abs(A12) + abs(A16) + b1,
      abs(A12) + abs(A22) + abs(A26) + b2,
      abs(A16) + abs(A26) + abs(A66) + b6
    ),
    largest2(
      b1 + abs(D11) + abs(D12) + abs(D16),
      b2 + abs(D12) + abs(D22) + abs(D26),
      b6 + abs(D16) + abs(D26) + abs(D66)
    ),
    0
  );
  const inverseNorm = largest2(
    largest2(
      abs(a11) + abs(a12) + abs(a16) + abs(Y11) + abs(Y12) + abs(Y13),
      abs(a12) + abs(a22) + abs(a26) + abs(Y21) + abs(Y22) + abs(Y23),
      abs(a16) + abs(a26) + abs(a66) + abs(Y31) + abs(Y32) + abs(Y33)
    ),
    largest2(
      abs(Y11) + abs(Y21) + abs(Y31) + abs(d11) + abs(d12) + abs(d16),
      abs(Y12) + abs(Y22) + abs(Y32) + abs(d12) + abs(d22) + abs(d26),
      abs(Y13) + abs(Y23) + abs(Y33) + abs(d16) + abs(d26) + abs(d66)
    ),
    0
  );
  v[at4 + layout.condition] = norm * inverseNorm;
  v[atA] = a11;
  v[atA + 1] = a12;
  v[atA + 2] = a16;
  v[atA + 3] = a22;
  v[atA + 4] = a26;
  v[atA + 5] = a66;
  v[atB] = (0 - Y11) * r;
  v[atB + 1] = (0 - Y12) * r;
  v[atB + 2] = (0 - Y13) * r;
  v[atB + 3] = (0 - Y21) * r;
  v[atB + 4] = (0 - Y22) * r;
  v[atB + 5] = (0 - Y23) * r;
  v[atB + 6] = (0 - Y31) * r;
  v[atB + 7] = (0 - Y32) * r;
  v[atB + 8] = (0 - Y33) * r;
  v[atD] = d11 * rr;
  v[atD + 1] = d12 * rr;
  v[atD + 2] = d16 * rr;
  v[atD + 3] = d22 * rr;
  v[atD + 4] = d26 * rr;
  v[atD + 5] = d66 * rr;
  return true;
}
function largest2(x, y, z15) {
  const most5 = x > y ? x : y;
  return most5 > z15 ? most5 : z15;
}

// packages/core/src/laminate/kernel-ply-stress.ts
var STRESS_ROW = 13;
function writeStressRows(material2, angles, table4, from) {
  const [Q11, Q12, Q22, Q66] = reducedStiffness(material2);
  const { alpha1 = 0, alpha2 = 0 } = material2.expansion ?? {};
  const heat1 = Q11 * alpha1 + Q12 * alpha2;
  const heat2 = Q12 * alpha1 + Q22 * alpha2;
  for (let i = 0; i < angles.length; i++) {
    const at4 = from + i * STRESS_ROW;
    const { sin: s, cos: c } = sinCosDegrees(angles[i]);
    const cc = c * c;
    const ss = s * s;
    const cs = c * s;
    table4[at4] = Q11 * cc + Q12 * ss;
    table4[at4 + 1] = Q11 * ss + Q12 * cc;
    table4[at4 + 2] = (Q11 - Q12) * cs;
    table4[at4 + 3] = Q12 * cc + Q22 * ss;
    table4[at4 + 4] = Q12 * ss + Q22 * cc;
    table4[at4 + 5] = (Q12 - Q22) * cs;
    table4[at4 + 6] = 2 * Q66 * cs;
    table4[at4 + 7] = Q66 * (c - s) * (c + s);
    table4[at4 + 8] = heat1;
    table4[at4 + 9] = heat2;
    table4[at4 + 10] = cc * heat1 + ss * heat2;
    table4[at4 + 11] = ss * heat1 + cc * heat2;
    table4[at4 + 12] = cs * (heat1 - heat2);
  }
}
var sigma1 = (table4, at4, x, y, xy) => table4[at4] * x + table4[at4 + 1] * y + table4[at4 + 2] * xy;
var sigma2 = (table4, at4, x, y, xy) => table4[at4 + 3] * x + table4[at4 + 4] * y + table4[at4 + 5] * xy;
var tau12 = (table4, at4, x, y, xy) => table4[at4 + 6] * (y - x) + table4[at4 + 7] * xy;

// packages/core/src/laminate/kernel-least-ratio.ts
var deformation = new Float64Array(2 * LOAD_STRIDE);
function leastRatio(ratio, { plyOffsets, row, thickness }, { stress: table4, constants: constants3 }, out, k, at4, to) {
  const ex = deformation[0];
  const ey = deformation[1];
  const exy = deformation[2];
  const kx = deformation[3];
  const ky = deformation[4];
  const kxy = deformation[5];
  const first2 = plyOffsets[k];
  const end2 = plyOffsets[k + 1];
  let z15 = -0.5 * out.values[at4 + layout.thickness];
  let x = ex + z15 * kx;
  let y = ey + z15 * ky;
  let xy = exy + z15 * kxy;
  let least2 = Number.MAX_VALUE;
  let where = -1;
  for (let i = first2; i < end2; i++) {
    z15 += thickness[i];
    const upX = ex + z15 * kx;
    const upY = ey + z15 * ky;
    const upXy = exy + z15 * kxy;
    const r = row[i];
    const c = constants3[r];
    if (c !== void 0) {
      const p2 = r * STRESS_ROW;
      const p0 = table4[p2];
      const p1 = table4[p2 + 1];
      const p22 = table4[p2 + 2];
      const p3 = table4[p2 + 3];
      const p4 = table4[p2 + 4];
      const p5 = table4[p2 + 5];
      const p6 = table4[p2 + 6];
      const p7 = table4[p2 + 7];
      let R = ratio(p0 * x + p1 * y + p22 * xy, p3 * x + p4 * y + p5 * xy, p6 * (y - x) + p7 * xy, 0, 0, 0, c, least2);
      if (R < least2) {
        least2 = R;
        where = 2 * (i - first2);
      }
      R = ratio(
        p0 * upX + p1 * upY + p22 * upXy,
        p3 * upX + p4 * upY + p5 * upXy,
        p6 * (upY - upX) + p7 * upXy,
        0,
        0,
        0,
        c,
        least2
      );
      if (R < least2) {
        least2 = R;
        where = 2 * (i - first2) + 1;
      }
    }
    x = upX;
    y = upY;
    xy = upXy;
  }
  out.ratio[to] = where < 0 ? Number.POSITIVE_INFINITY : least2;
  out.weakest[to] = where;
}
function leastRatioHeated(ratio, change, { plyOffsets, row, thickness }, { stress: table4, constants: constants3 }, out, k, at4, to) {
  const e = deformation;
  const first2 = plyOffsets[k];
  const end2 = plyOffsets[k + 1];
  let z15 = -0.5 * out.values[at4 + layout.thickness];
  let least2 = Number.MAX_VALUE;
  let where = -1;
  for (let face = 2 * first2; face < 2 * end2; face++) {
    const r = row[face >> 1];
    const c = constants3[r];
    if (c !== void 0) {
      const p2 = r * STRESS_ROW;
      const x = e[0] + z15 * e[3];
      const y = e[1] + z15 * e[4];
      const xy = e[2] + z15 * e[5];
      const heldX = e[6] + z15 * e[9];
      const heldY = e[7] + z15 * e[10];
      const heldXy = e[8] + z15 * e[11];
      const R = ratio(
        sigma1(table4, p2, x, y, xy),
        sigma2(table4, p2, x, y, xy),
        tau12(table4, p2, x, y, xy),
        sigma1(table4, p2, heldX, heldY, heldXy) - change * table4[p2 + 8],
        sigma2(table4, p2, heldX, heldY, heldXy) - change * table4[p2 + 9],
        tau12(table4, p2, heldX, heldY, heldXy),
        c,
        least2
      );
      if (R < least2) {
        least2 = R;
        where = face - 2 * first2;
      }
    }
    if (face % 2 === 0) z15 += thickness[face >> 1];
  }
  out.ratio[to] = where < 0 ? Number.POSITIVE_INFINITY : least2;
  out.weakest[to] = where;
}

// packages/core/src/laminate/strength/criterion.ts
var failureCriteria = ["maxStress", "maxStrain", "tsaiHill", "tsaiWu", "hashin", "puck"];
var tsaiHillVariants = ["sign", "tensile", "crossTerm"];
var puckInclinations = {
  carbon: { plus: 0.35, minus: 0.3 },
  glass: { plus: 0.3, minus: 0.25 }
};
function puckInclination({ puck = "carbon" }) {
  if (typeof puck === "object") return puck;
  return puckInclinations[choice("puck", puck, Object.keys(puckInclinations))];
}

// packages/core/src/laminate/strength/first-root.ts
function enter(r, m) {
  if (r > 0 || r === 0 && m >= 0) return 0;
  return m > 0 ? -r / m : Number.POSITIVE_INFINITY;
}
function leave(r, m) {
  return m < 0 ? -r / m : Number.POSITIVE_INFINITY;
}
function linearLimit(r, m, above, below) {
  if (r >= above || r <= -below) return 0;
  if (m > 0) return (above - r) / m;
  return m < 0 ? (below + r) / -m : Number.POSITIVE_INFINITY;
}
function firstRoot(lo, hi, a, b, c) {
  if (!(lo < Number.POSITIVE_INFINITY && lo <= hi)) return Number.POSITIVE_INFINITY;
  return lo + firstRootFromZero(hi - lo, a, b + 2 * a * lo, c + (b + a * lo) * lo);
}
function firstRootFromZero(hi, a, b, c) {
  if (c >= 0) return 0;
  if (a >= 0 && (a * hi + b) * hi + c < 0) return Number.POSITIVE_INFINITY;
  return root(hi, a, b, c);
}
function root(hi, a, b, c) {
  const square2 = b * b - 4 * a * c;
  if (square2 < 0) return Number.POSITIVE_INFINITY;
  const length2 = Math.sqrt(square2);
  let R = Number.POSITIVE_INFINITY;
  if (b >= 0 && b + length2 > 0) R = -2 * c / (b + length2);
  else if (b < 0 && a > 0) R = (length2 - b) / (2 * a);
  return R <= hi ? R : Number.POSITIVE_INFINITY;
}

// packages/core/src/laminate/strength/ratio-hashin.ts
function hashinRatio(s1, s2, s12, r1, r2, r12, { Xt, Xc, Yt, Yc, S, ST, alpha }, limit5) {
  const X2 = 1 / (Xt * Xt);
  const Y3 = 1 / (Yt * Yt);
  const T = 1 / (4 * ST * ST);
  const L = 1 / (S * S);
  const linear = (Yc * T - 1 / Yc) / 2;
  const shear2 = L * s12 * s12;
  const shear1 = 2 * L * s12 * r12;
  const shear0 = L * r12 * r12 - 1;
  const fibreTension = firstRoot(
    enter(r1, s1),
    Math.min(leave(r1, s1), limit5),
    X2 * s1 * s1 + alpha * shear2,
    2 * X2 * s1 * r1 + alpha * shear1,
    X2 * r1 * r1 + alpha * (shear0 + 1) - 1
  );
  const fibreCompression = linearLimit(r1, s1, Number.POSITIVE_INFINITY, Xc);
  const matrixTension = firstRoot(
    enter(r2, s2),
    Math.min(leave(r2, s2), limit5),
    Y3 * s2 * s2 + shear2,
    2 * Y3 * s2 * r2 + shear1,
    Y3 * r2 * r2 + shear0
  );
  const matrixCompression = firstRoot(
    enter(-r2, -s2),
    Math.min(leave(-r2, -s2), limit5),
    T * s2 * s2 + shear2,
    2 * (T * s2 * r2 + linear * s2) + shear1,
    T * r2 * r2 + 2 * linear * r2 + shear0
  );
  return Math.min(fibreTension, fibreCompression, matrixTension, matrixCompression);
}

// packages/core/src/laminate/strength/ratio-max-stress.ts
function maxStressRatio(s1, s2, s12, r1, r2, r12, c) {
  return Math.min(linearLimit(r1, s1, c.Xt, c.Xc), linearLimit(r2, s2, c.Yt, c.Yc), linearLimit(r12, s12, c.S, c.S));
}

// packages/core/src/laminate/strength/ratio-max-strain.ts
function maxStrainRatio(s1, s2, s12, r1, r2, r12, c) {
  const { nu12, nu21 } = c;
  return maxStressRatio(s1 - nu12 * s2, s2 - nu21 * s1, s12, r1 - nu12 * r2, r2 - nu21 * r1, r12, c);
}

// packages/core/src/laminate/strength/ratio-puck.ts
function puckRatio(s1, s2, s12, r1, r2, r12, { Xt, Xc, Yt, Yc, S, pPlus, pMinus, pAcross, RA }, limit5) {
  const L = 1 / (S * S);
  const a = L * s12 * s12;
  const b = 2 * L * s12 * r12;
  const c = L * r12 * r12;
  const fibre2 = linearLimit(r1, s1, Xt, Xc);
  const quadraticA = (1 - 2 * pPlus * Yt / S) / (Yt * Yt);
  const linearA = 2 * pPlus / S;
  const modeA = firstRoot(
    enter(r2, s2),
    Math.min(leave(r2, s2), limit5),
    a + quadraticA * s2 * s2,
    b + 2 * quadraticA * s2 * r2 + linearA * s2,
    c + quadraticA * r2 * r2 + linearA * r2 - 1
  );
  const linearB = 2 * pMinus / S;
  const modeB = firstRoot(
    Math.max(enter(-r2, -s2), enter(r2 + RA, s2)),
    Math.min(leave(-r2, -s2), leave(r2 + RA, s2), limit5),
    a,
    b + linearB * s2,
    c + linearB * r2 - 1
  );
  const shearC = 1 / (4 * (1 + pAcross) * (1 + pAcross));
  const modeC = firstRoot(
    enter(-r2 - RA, -s2),
    Math.min(leave(-r2 - RA, -s2), limit5),
    shearC * a + s2 / Yc * (s2 / Yc),
    shearC * b + 2 * s2 * r2 / (Yc * Yc) + s2 / Yc,
    shearC * c + r2 / Yc * (r2 / Yc) + r2 / Yc
  );
  return Math.min(fibre2, modeA, modeB, modeC);
}

// packages/core/src/laminate/strength/ratio-tsai-hill.ts
function tsaiHillRatio(s1, s2, s12, r1, r2, r12, c, limit5) {
  if (r1 === 0 && r2 === 0) return sector(s1 < 0 ? -1 : 1, s2 < 0 ? -1 : 1, s1, s2, s12, r1, r2, r12, c, limit5);
  return Math.min(
    sector(1, 1, s1, s2, s12, r1, r2, r12, c, limit5),
    sector(1, -1, s1, s2, s12, r1, r2, r12, c, limit5),
    sector(-1, 1, s1, s2, s12, r1, r2, r12, c, limit5),
    sector(-1, -1, s1, s2, s12, r1, r2, r12, c, limit5)
  );
}
function sector(sign1, sign2, s1, s2, s12, r1, r2, r12, c, limit5) {
  const lo = Math.max(enter(sign1 * r1, sign1 * s1), enter(sign2 * r2, sign2 * s2));
  if (lo === Number.POSITIVE_INFINITY) return lo;
  const hi = Math.min(leave(sign1 * r1, sign1 * s1), leave(sign2 * r2, sign2 * s2), limit5);
  const X2 = sign1 > 0 ? c.Xt : c.hillXc;
  const Y3 = sign2 > 0 ? c.Yt : c.hillYc;
  const crossSign = c.hillCrossBySigma2 === 1 ? sign2 : sign1;
  const Xm = crossSign > 0 ? c.Xt : c.hillXc;
  const F = 1 / (X2 * X2);
  const G = 1 / (Y3 * Y3);
  const H2 = 1 / (Xm * Xm);
  const L = 1 / (c.S * c.S);
  return firstRoot(
    lo,
    hi,
    F * s1 * s1 - H2 * s1 * s2 + G * s2 * s2 + L * s12 * s12,
    2 * (F * s1 * r1 + G * s2 * r2 + L * s12 * r12) - H2 * (s1 * r2 + s2 * r1),
    F * r1 * r1 - H2 * r1 * r2 + G * r2 * r2 + L * r12 * r12 - 1
  );
}

// packages/core/src/laminate/strength/ratio-tsai-wu.ts
function tsaiWuRatio(s1, s2, s12, r1, r2, r12, c, limit5) {
  const a = c.F11 * s1 * s1 + c.F22 * s2 * s2 + c.F66 * s12 * s12 + 2 * c.F12 * s1 * s2;
  const b = c.F1 * s1 + c.F2 * s2;
  if (r1 === 0 && r2 === 0 && r12 === 0) return firstRootFromZero(limit5, a, b, -1);
  return firstRootFromZero(limit5, a, b + mixed(s1, s2, s12, r1, r2, r12, c), residual(r1, r2, r12, c) - 1);
}
function mixed(s1, s2, s12, r1, r2, r12, { F11, F22, F66, F12 }) {
  return 2 * (F11 * s1 * r1 + F22 * s2 * r2 + F66 * s12 * r12 + F12 * (s1 * r2 + s2 * r1));
}
function residual(r1, r2, r12, { F1, F2, F11, F22, F66, F12 }) {
  return F1 * r1 + F2 * r2 + F11 * r1 * r1 + F22 * r2 * r2 + F66 * r12 * r12 + 2 * F12 * r1 * r2;
}

// packages/core/src/laminate/strength/criterion-models.ts
var ratioFunctions = {
  maxStress: maxStressRatio,
  maxStrain: maxStrainRatio,
  tsaiHill: tsaiHillRatio,
  tsaiWu: tsaiWuRatio,
  hashin: hashinRatio,
  puck: puckRatio
};
var criterionSources = {
  maxStress: ["jones-1999"],
  maxStrain: ["jones-1999"],
  tsaiHill: ["azzi-tsai-1965", "hill-1948"],
  tsaiWu: ["tsai-wu-1971", "tsai-hahn-1980"],
  hashin: ["hashin-1980"],
  puck: ["puck-schuermann-1998", "puck-schuermann-2002", "puck-kopp-knops-2002"]
};
var hillWords = {
  sign: "each strength is tensile or compressive by the sign of its stress",
  tensile: "tensile strengths for either sign, which suits equal strengths only",
  crossTerm: "strengths by the sign of their stress, X of the cross term by the sign of the stress across the fibre"
};
function criterionNotes(criterion, options) {
  const text3 = assumption(criterion, options);
  const [source] = criterionSources[criterion];
  return text3 === void 0 ? [] : [{ level: "assumption", text: text3, ...source === void 0 ? {} : { source } }];
}
function assumption(criterion, options) {
  switch (criterion) {
    case "maxStress":
      return void 0;
    case "maxStrain":
      return "Maximum strain: the limits are strength over modulus, each measured with the other stresses zero.";
    case "tsaiHill":
      return `Tsai-Hill, variant \`${options.variant ?? "sign"}\`: ${hillWords[options.variant ?? "sign"]}.`;
    case "tsaiWu":
      return `Tsai-Wu with the interaction F12* = ${options.F12star ?? -0.5}.`;
    case "hashin": {
      const ST = options.transverseShearStrength;
      const given = ST === void 0 ? "Yc/2" : `${Number((ST / 1e6).toPrecision(4))} MPa`;
      return `Hashin with shear strength across the fibre ${given} and alpha = ${options.alpha ?? 1}.`;
    }
    case "puck": {
      const { plus, minus: minus2 } = puckInclination(options);
      return `Puck with inclinations ${plus} (tension) and ${minus2} (compression); the one across the fibre follows from them.`;
    }
  }
}

// packages/core/src/laminate/kernel-strength.ts
var hindered = new Float64Array(LOAD_STRIDE);
function writeRatios(batch, strength, out, k, at4) {
  const { table: table4, loads, temperatureChange } = strength;
  const ratio = ratioFunctions[table4.criterion];
  const count = loads.length / LOAD_STRIDE;
  if (temperatureChange !== void 0) sumHindered(batch, table4.stress, k, out.values[at4 + layout.thickness]);
  for (let load = 0; load < count; load++) {
    writeDeformation(out.values, at4, loads, load * LOAD_STRIDE, 1, 0);
    const change = temperatureChange === void 0 ? 0 : temperatureChange[load];
    if (change === 0) leastRatio(ratio, batch, table4, out, k, at4, k * count + load);
    else {
      writeDeformation(out.values, at4, hindered, 0, change, LOAD_STRIDE);
      leastRatioHeated(ratio, change, batch, table4, out, k, at4, k * count + load);
    }
  }
}
function writeDeformation(v, at4, force, from, factor, to) {
  const a = at4 + layout.a;
  const b = at4 + layout.b;
  const d = at4 + layout.d;
  const Nx = factor * force[from];
  const Ny = factor * force[from + 1];
  const Nxy = factor * force[from + 2];
  const Mx = factor * force[from + 3];
  const My = factor * force[from + 4];
  const Mxy = factor * force[from + 5];
  deformation[to] = v[a] * Nx + v[a + 1] * Ny + v[a + 2] * Nxy + v[b] * Mx + v[b + 1] * My + v[b + 2] * Mxy;
  deformation[to + 1] = v[a + 1] * Nx + v[a + 3] * Ny + v[a + 4] * Nxy + v[b + 3] * Mx + v[b + 4] * My + v[b + 5] * Mxy;
  deformation[to + 2] = v[a + 2] * Nx + v[a + 4] * Ny + v[a + 5] * Nxy + v[b + 6] * Mx + v[b + 7] * My + v[b + 8] * Mxy;
  deformation[to + 3] = v[b] * Nx + v[b + 3] * Ny + v[b + 6] * Nxy + v[d] * Mx + v[d + 1] * My + v[d + 2] * Mxy;
  deformation[to + 4] = v[b + 1] * Nx + v[b + 4] * Ny + v[b + 7] * Nxy + v[d + 1] * Mx + v[d + 3] * My + v[d + 4] * Mxy;
  deformation[to + 5] = v[b + 2] * Nx + v[b + 5] * Ny + v[b + 8] * Nxy + v[d + 2] * Mx + v[d + 4] * My + v[d + 5] * Mxy;
}
function sumHindered({ plyOffsets, row, thickness }, table4, k, t) {
  hindered.fill(0);
  const end2 = plyOffsets[k + 1];
  let z15 = -0.5 * t;
  for (let i = plyOffsets[k]; i < end2; i++) {
    const w = thickness[i];
    const moment = w * (z15 + 0.5 * w);
    const p2 = row[i] * STRESS_ROW + 10;
    for (let j = 0; j < 3; j++) {
      hindered[j] = hindered[j] + table4[p2 + j] * w;
      hindered[j + 3] = hindered[j + 3] + table4[p2 + j] * moment;
    }
    z15 += w;
  }
}

// packages/core/src/laminate/kernel-sum.ts
var twelfth = 1 / 12;
function sumStack(table4, row, thickness, first2, end2, out, at4) {
  let h = 0;
  for (let k = first2; k < end2; k++) h += thickness[k];
  let A0 = 0;
  let A1 = 0;
  let A2 = 0;
  let A3 = 0;
  let A4 = 0;
  let A5 = 0;
  let B0 = 0;
  let B1 = 0;
  let B2 = 0;
  let B3 = 0;
  let B4 = 0;
  let B5 = 0;
  let D0 = 0;
  let D1 = 0;
  let D2 = 0;
  let D3 = 0;
  let D4 = 0;
  let D5 = 0;
  let z15 = -h * 0.5;
  for (let k = first2; k < end2; k++) {
    const w = thickness[k];
    const middle = z15 + w * 0.5;
    z15 += w;
    const b = w * middle;
    const d = b * middle + w * w * w * twelfth;
    const p2 = row[k] * ROW;
    let q = table4[p2];
    A0 += q * w;
    B0 += q * b;
    D0 += q * d;
    q = table4[p2 + 1];
    A1 += q * w;
    B1 += q * b;
    D1 += q * d;
    q = table4[p2 + 2];
    A2 += q * w;
    B2 += q * b;
    D2 += q * d;
    q = table4[p2 + 3];
    A3 += q * w;
    B3 += q * b;
    D3 += q * d;
    q = table4[p2 + 4];
    A4 += q * w;
    B4 += q * b;
    D4 += q * d;
    q = table4[p2 + 5];
    A5 += q * w;
    B5 += q * b;
    D5 += q * d;
  }
  out[at4] = A0;
  out[at4 + 1] = A1;
  out[at4 + 2] = A2;
  out[at4 + 3] = A3;
  out[at4 + 4] = A4;
  out[at4 + 5] = A5;
  out[at4 + 6] = B0;
  out[at4 + 7] = B1;
  out[at4 + 8] = B2;
  out[at4 + 9] = B3;
  out[at4 + 10] = B4;
  out[at4 + 11] = B5;
  out[at4 + 12] = D0;
  out[at4 + 13] = D1;
  out[at4 + 14] = D2;
  out[at4 + 15] = D3;
  out[at4 + 16] = D4;
  out[at4 + 17] = D5;
  return h;
}

// packages/core/src/laminate/kernel.ts
function writeConstants(c, from, scale, out, to) {
  const r1 = 1 / c[from];
  const r2 = 1 / c[from + 3];
  const less12 = 0 - c[from + 1];
  out[to] = scale * r1;
  out[to + 1] = scale * r2;
  out[to + 2] = scale / c[from + 5];
  out[to + 3] = less12 * r1;
  out[to + 4] = less12 * r2;
  out[to + 5] = c[from + 2] * r1;
  out[to + 6] = c[from + 4] * r2;
}
function evaluateBatch(batch, out) {
  const { plyOffsets, row, thickness, qbarTable } = batch;
  const { values, status } = out;
  const n = Math.max(0, plyOffsets.length - 1);
  checkOffsets(plyOffsets);
  checkLength("row", row.length, plyOffsets[n] ?? 0);
  checkLength("thickness", thickness.length, plyOffsets[n] ?? 0);
  checkLength("values", values.length, n * STRIDE);
  checkLength("status", status.length, n);
  const { strength } = batch;
  const loads = strength === void 0 ? 0 : checkStrength(strength, qbarTable, out, n);
  for (let k = 0; k < n; k++) {
    const at4 = k * STRIDE;
    const first2 = plyOffsets[k];
    const end2 = plyOffsets[k + 1];
    const t = sumStack(qbarTable, row, thickness, first2, end2, values, at4);
    dropNoise(values, at4, t, end2 - first2);
    if (invertStiffness(values, at4, t)) {
      const r = 1 / t;
      writeConstants(values, at4 + layout.a, r, values, at4 + layout.inPlane);
      writeConstants(values, at4 + layout.d, 12 * r * r * r, values, at4 + layout.flexural);
      values[at4 + layout.thickness] = t;
      status[k] = 0;
      if (strength !== void 0) writeRatios(batch, strength, out, k, at4);
    } else {
      values.fill(0, at4, at4 + STRIDE);
      out.ratio?.fill(0, k * loads, (k + 1) * loads);
      out.weakest?.fill(-1, k * loads, (k + 1) * loads);
      status[k] = 1;
    }
  }
}
function dropNoise(values, at4, t, plies2) {
  const A11 = values[at4];
  const A22 = values[at4 + 3];
  const noise2 = 2 ** -52 * plies2 * t * (A11 > A22 ? A11 : A22);
  for (let i = at4 + layout.B; i < at4 + layout.D; i++) {
    const b = values[i];
    if (b < noise2 && b > -noise2) values[i] = 0;
  }
}
function checkStrength(strength, qbarTable, out, n) {
  const { table: table4, loads, temperatureChange } = strength;
  choice("criterion", table4.criterion, failureCriteria);
  const count = Math.floor(loads.length / LOAD_STRIDE);
  const rows = qbarTable.length / ROW;
  checkLength("loads", loads.length, Math.ceil(loads.length / LOAD_STRIDE) * LOAD_STRIDE);
  checkLength("temperatureChange", temperatureChange?.length ?? count, count);
  checkLength("stress", table4.stress.length, rows * STRESS_ROW);
  checkLength("constants", table4.constants.length, rows);
  checkLength("ratio", out.ratio?.length ?? 0, n * count);
  checkLength("weakest", out.weakest?.length ?? 0, n * count);
  checkFinite("loads", loads);
  if (temperatureChange === void 0) return count;
  checkFinite("temperatureChange", temperatureChange);
  if (!table4.expands && temperatureChange.some((change) => change !== 0)) {
    fail({
      code: "not-computable",
      message: "heat acts, but a material of the batch has no thermal expansion",
      allowed: "alpha1 and alpha2 for every material, or no change of temperature"
    });
  }
  return count;
}
function checkOffsets(plyOffsets) {
  let last = 0;
  for (let k = 0; k < plyOffsets.length; k++) {
    const next = plyOffsets[k];
    if (next < last) {
      fail({
        code: "out-of-range",
        message: `\`plyOffsets\` falls from ${last} to ${next} at entry ${k}`,
        allowed: "from 0 up, each at least the one before"
      });
    }
    last = next;
  }
}
function checkLength(name, length2, needed4) {
  if (length2 >= needed4) return;
  fail({
    code: "out-of-range",
    message: `\`${name}\` has ${length2} entries, the batch needs ${needed4}`,
    allowed: `${needed4} entries or more`,
    hint: "allocateBatch(laminates, plies, qbarTable) makes arrays that fit"
  });
}

// packages/core/src/laminate/stiffness.ts
var largestCondition = 1e14;
function stiffness(laminate2) {
  const { qbarTable, row } = tabulateQbar(laminate2.plies);
  const { batch, out } = allocateBatch(1, laminate2.plies.length, qbarTable);
  batch.plyOffsets[1] = laminate2.plies.length;
  batch.row.set(row);
  batch.thickness.set(laminate2.plies.map((ply3) => ply3.thickness));
  evaluateBatch(batch, out);
  const { values } = out;
  const condition = values[layout.condition] ?? 0;
  if (out.status[0] !== 0) {
    fail({
      code: "not-admissible",
      message: "the stiffness of the laminate is not positive definite",
      allowed: "plies with E1, E2 and G12 above 0 and nu12\xB2 below E1/E2"
    });
  }
  if (condition > largestCondition) {
    fail({
      code: "not-admissible",
      message: `the stiffness of the laminate has the condition number ${condition.toExponential(1)}, the limit is 1e14`,
      allowed: "a condition number of 1e14 or less",
      hint: "a ply with a modulus many orders above or below the others has often a wrong unit"
    });
  }
  return {
    A: symmetric(values, layout.A),
    B: symmetric(values, layout.B),
    D: symmetric(values, layout.D),
    a: symmetric(values, layout.a),
    b: full(values, layout.b),
    d: symmetric(values, layout.d),
    thickness: values[layout.thickness] ?? 0,
    condition,
    notes: laminate2.notes,
    sources: uniqueSources(laminate2.sources, ["jones-1999", "tsai-pagano-1968"])
  };
}

// packages/core/src/laminate/diagnosis.ts
var tolerance = 1e-6;
function diagnosis(laminate2) {
  const s = stiffness(laminate2);
  const pattern2 = stackPattern(laminate2);
  const measures = measure(s, pattern2);
  const symmetric3 = pattern2.unmirroredShare === 0;
  const verdict = {
    symmetric: symmetric3,
    antisymmetric: pattern2.antisymmetric && !symmetric3,
    uncoupled: measures.coupling < tolerance,
    balanced: pattern2.unbalancedShare === 0,
    crossPly: pattern2.offAxisShare === 0 && pattern2.largestBlock !== void 0,
    anglePly: pattern2.anglePly,
    quasiIsotropic: measures.anisotropy < tolerance,
    homogenised: measures.inhomogeneity < tolerance,
    tenPercentRule: measures.leastDirectionShare >= 0.1 - 1e-9,
    measures,
    directionShares: pattern2.directionShares,
    ...pattern2.largestBlock === void 0 ? {} : { largestBlock: pattern2.largestBlock },
    largestAngleJump: pattern2.largestAngleJump
  };
  return {
    ...verdict,
    statements: diagnosisStatements(verdict),
    notes: laminate2.plies.some(isCloth) ? [...s.notes, clothNote] : s.notes,
    sources: s.sources
  };
}
var clothNote = {
  level: "assumption",
  text: "A ply whose smaller modulus is at least half of the larger counts as cloth, with fibres along and across."
};
function measure({ A, B, D, thickness: t }, pattern2) {
  return {
    coupling: largest(B) / (largest(A) * t / 4),
    shearCoupling: shear(A),
    bendTwist: shear(D),
    anisotropy: anisotropy(A),
    inhomogeneity: inhomogeneity(A, D, t),
    unmirroredShare: pattern2.unmirroredShare,
    unbalancedShare: pattern2.unbalancedShare,
    offAxisShare: pattern2.offAxisShare,
    leastDirectionShare: Math.min(...pattern2.directionShares.map(({ share: share2 }) => share2))
  };
}
function shear(m) {
  return Math.max(Math.abs(entry(m, 0, 2)), Math.abs(entry(m, 1, 2))) / Math.max(entry(m, 0, 0), entry(m, 1, 1));
}
function anisotropy(A) {
  const { U1, U4, U5 } = stiffnessInvariants([entry(A, 0, 0), entry(A, 0, 1), entry(A, 1, 1), entry(A, 2, 2)]);
  const isotropic = [U1, U4, 0, U4, U1, 0, 0, 0, U5];
  return Math.max(...A.flat().map((value, i) => Math.abs(value - (isotropic[i] ?? 0)))) / U1;
}
function inhomogeneity(A, D, t) {
  const bending = D.flat().map((value) => 12 * value / t ** 3);
  return Math.max(...A.flat().map((value, i) => Math.abs((bending[i] ?? 0) - value / t))) / (largest(A) / t);
}

// packages/core/src/laminate/stack.ts
function laminate(plies2) {
  if (plies2.length === 0) {
    fail({ code: "missing-key", message: "a laminate has 0 plies", allowed: "1 ply or more" });
  }
  plies2.forEach((ply3, k) => {
    if (!Number.isFinite(ply3.angle)) {
      fail({
        code: "out-of-range",
        message: `the angle of ply ${k + 1} (${ply3.name}) is ${ply3.angle}`,
        allowed: "a finite number of degrees"
      });
    }
    if (!(ply3.thickness > 0 && Number.isFinite(ply3.thickness))) {
      fail({
        code: "out-of-range",
        message: `the thickness of ply ${k + 1} (${ply3.name}) is ${ply3.thickness} m`,
        allowed: "a finite length above 0"
      });
    }
  });
  return {
    plies: plies2,
    thickness: plies2.reduce((sum5, ply3) => sum5 + ply3.thickness, 0),
    notes: uniqueNotes(plies2.flatMap((ply3) => ply3.notes)),
    sources: uniqueSources(...plies2.map((ply3) => ply3.sources))
  };
}
function arealMass2(laminate2) {
  const total3 = sum2(laminate2.plies, (ply3) => ply3.density === void 0 ? void 0 : ply3.density * ply3.thickness);
  const fibre2 = sum2(laminate2.plies, (ply3) => ply3.fibreArealMass ?? (ply3.core ? 0 : void 0));
  const resin2 = sum2(laminate2.plies, (ply3) => ply3.resinArealMass ?? (ply3.core ? 0 : void 0));
  return {
    ...total3 === void 0 ? {} : { total: total3 },
    ...fibre2 === void 0 ? {} : { fibre: fibre2 },
    ...resin2 === void 0 ? {} : { resin: resin2 }
  };
}
function sum2(plies2, of) {
  let total3 = 0;
  for (const ply3 of plies2) {
    const value = of(ply3);
    if (value === void 0) return void 0;
    total3 += value;
  }
  return total3;
}

// packages/core/src/laminate/axes.ts
function rotateStrain([x, y, xy], angle2) {
  const { sin: s, cos: c } = sinCosDegrees(angle2);
  const half = c * s * xy;
  return [c * c * x + s * s * y + half, s * s * x + c * c * y - half, 2 * c * s * (y - x) + (c - s) * (c + s) * xy];
}
function rotateStress([x, y, xy], angle2) {
  const { sin: s, cos: c } = sinCosDegrees(angle2);
  const twice = 2 * c * s * xy;
  return [c * c * x + s * s * y + twice, s * s * x + c * c * y - twice, c * s * (y - x) + (c - s) * (c + s) * xy];
}
function times(m, [x, y, xy]) {
  const row = (i) => entry(m, i, 0) * x + entry(m, i, 1) * y + entry(m, i, 2) * xy;
  return [row(0), row(1), row(2)];
}

// packages/core/src/laminate/respond.ts
import { Matrix } from "ml-matrix";

// packages/core/src/laminate/free-strain.ts
function freeStrain(laminate2, load) {
  const { plies: plies2 } = laminate2;
  const uniform = finite2("temperatureChange", load.temperatureChange ?? 0);
  const gradient = finite2("temperatureGradient", load.temperatureGradient ?? 0);
  const moisture2 = moisturePerPly(laminate2, load);
  const heated = uniform !== 0 || gradient !== 0;
  const heat = plies2.map((ply3, k) => {
    if (!heated) return [0, 0, 0];
    const { alpha1, alpha2 } = ply3.expansion ?? lacks(ply3.name, k, "thermal expansion", "alpha1 and alpha2");
    return [alpha1, alpha2, 0];
  });
  const swelling = plies2.map((ply3, k) => {
    const C = moisture2[k] ?? 0;
    if (C === 0) return [0, 0, 0];
    const { beta1, beta2 } = ply3.moistureExpansion ?? lacks(ply3.name, k, "moisture expansion", "beta1 and beta2");
    return [beta1 * C, beta2 * C, 0];
  });
  const { qbarTable, row } = tabulateQbar(plies2);
  const table4 = new Float64Array(plies2.length * ROW);
  plies2.forEach((ply3, k) => {
    const Qbar = symmetric(qbarTable, (row[k] ?? 0) * ROW);
    const hindered2 = (free) => times(Qbar, rotateStrain(free, -ply3.angle));
    table4.set([...hindered2(heat[k] ?? none), ...hindered2(swelling[k] ?? none)], k * ROW);
  });
  const moments = new Float64Array(3 * ROW);
  const order = Int32Array.from(plies2.keys());
  const thickness = Float64Array.from(plies2, (ply3) => ply3.thickness);
  sumStack(table4, order, thickness, 0, plies2.length, moments, 0);
  const m = (moment, i) => moments[moment * ROW + i] ?? 0;
  const resultant = (moment) => {
    const component2 = (i) => uniform * m(moment, i) + gradient * m(moment + 1, i) + m(moment, i + 3);
    return [component2(0), component2(1), component2(2)];
  };
  return {
    at: (k, z15) => {
      const [a1, a2] = heat[k] ?? none;
      const [b1, b2] = swelling[k] ?? none;
      const T = uniform + gradient * z15;
      return [a1 * T + b1, a2 * T + b2, 0];
    },
    N: resultant(0),
    M: resultant(1)
  };
}
var none = [0, 0, 0];
function moisturePerPly({ plies: plies2 }, { moisture: moisture2 = 0 }) {
  const list = typeof moisture2 === "number" ? plies2.map(() => moisture2) : moisture2;
  if (list.length !== plies2.length) {
    fail({
      code: "out-of-range",
      message: `moisture has ${list.length} numbers, the laminate has ${plies2.length} plies`,
      allowed: "one number for all plies, or one per ply"
    });
  }
  for (const value of list) finite2("moisture", value);
  return list;
}
function finite2(name, value) {
  if (Number.isFinite(value)) return value;
  return fail({ code: "not-a-number", message: `${name} is ${value}`, allowed: "a finite number" });
}
function lacks(name, k, what, keys) {
  return fail({
    code: "not-computable",
    message: `ply ${k + 1} (${name}) has no ${what}, so the response to it cannot be computed`,
    allowed: `${keys} for every ply of the laminate`,
    hint: `give the material its ${what}, or leave it out of the load`
  });
}

// packages/core/src/laminate/load.ts
var names = ["x", "y", "xy"];
function sixComponents(load) {
  const force = [...read("N", load.N), ...read("M", load.M)];
  const deformation2 = [...read("strain", load.strain), ...read("curvature", load.curvature)];
  force.forEach((value, i) => {
    if (value === null || deformation2[i] === null) return;
    const [forceName, shapeName] = i < 3 ? ["N", "strain"] : ["M", "curvature"];
    fail({
      code: "contradiction",
      message: `the load gives both ${forceName} = ${value} and ${shapeName} = ${deformation2[i]} for the component ${names[i % 3]}`,
      allowed: "one of the two per component",
      hint: `put null in the place of the one that shall follow from the other`
    });
  });
  return { force: force.map((value) => value ?? 0), deformation: deformation2 };
}
function read(name, components) {
  if (components !== void 0) demandThree(name, components);
  const [x, y, xy] = components ?? [null, null, null];
  [x, y, xy].forEach((value, i) => {
    if (value !== null && !Number.isFinite(value)) {
      fail({ code: "not-a-number", message: `${name} ${names[i]} is ${value}`, allowed: "a finite number, or null" });
    }
  });
  return [x, y, xy];
}
function demandThree(name, components) {
  if (Array.isArray(components) && components.length === 3) return;
  fail({
    code: "wrong-type",
    message: `${name} is ${Array.isArray(components) ? `a list of ${components.length}` : components}`,
    allowed: "a list of three: x, y, xy"
  });
}

// packages/core/src/laminate/respond.ts
function respond(laminate2, load) {
  const known = sixComponents(load);
  const free = freeStrain(laminate2, load);
  const s = stiffness(laminate2);
  const K = stiffness6(s);
  const held3 = [...free.N, ...free.M];
  const open = known.deformation.flatMap((value, i) => value === null ? [i] : []);
  const given = known.deformation.map((value) => value ?? 0);
  const size4 = (i) => i < 3 ? 1 : 1 / s.thickness;
  const product2 = (i, x) => x.reduce((sum5, value, j) => sum5 + value * (K[i]?.[j] ?? 0), 0);
  const factors2 = choleskyOf(new Matrix(open.map((i) => open.map((j) => (K[i]?.[j] ?? 0) * size4(i) * size4(j)))));
  if (factors2 === void 0) {
    return fail({
      code: "not-admissible",
      message: "the stiffness of the laminate is singular",
      allowed: "positive moduli"
    });
  }
  const unknown = factors2.solve(
    Matrix.columnVector(open.map((i) => ((known.force[i] ?? 0) + (held3[i] ?? 0) - product2(i, given)) * size4(i)))
  );
  const deformation2 = [...given];
  open.forEach((i, k) => {
    deformation2[i] = unknown.get(k, 0) * size4(i);
  });
  const force = known.force.map(
    (value, i) => known.deformation[i] === null ? value : product2(i, deformation2) - (held3[i] ?? 0)
  );
  const strain2 = vector(deformation2, 0);
  const curvature = vector(deformation2, 3);
  const plies2 = plyResponses(laminate2, strain2, curvature, free);
  demandFinite([...deformation2, ...force, ...plies2.flatMap(({ top, bottom }) => [...top.stress, ...bottom.stress])]);
  return {
    strain: strain2,
    curvature,
    N: vector(force, 0),
    M: vector(force, 3),
    plies: plies2,
    notes: [...s.notes, ...warpNotes(laminate2, load, curvature)],
    sources: uniqueSources(s.sources, ["kaw-2006"])
  };
}
function demandFinite(values) {
  if (values.every(Number.isFinite)) return;
  fail({
    code: "not-computable",
    message: "the response to this load is not a finite number",
    allowed: "loads and moduli whose products a number of 64 bits can hold"
  });
}
function plyResponses(laminate2, strain2, curvature, free) {
  const table4 = new Float64Array(laminate2.plies.length * STRESS_ROW);
  laminate2.plies.forEach((ply3, k) => {
    writeStressRows(ply3, [ply3.angle], table4, k * STRESS_ROW);
  });
  let lower = -laminate2.thickness / 2;
  return laminate2.plies.map((ply3, k) => {
    const p2 = k * STRESS_ROW;
    const at4 = (z15) => {
      const here = [strain2[0] + z15 * curvature[0], strain2[1] + z15 * curvature[1], strain2[2] + z15 * curvature[2]];
      const free12 = free.at(k, z15);
      const strain12 = rotateStrain(here, ply3.angle);
      const [x, y, xy] = minus(here, rotateStrain(free12, -ply3.angle));
      const stress12 = [sigma1(table4, p2, x, y, xy), sigma2(table4, p2, x, y, xy), tau12(table4, p2, x, y, xy)];
      return {
        z: z15,
        stress: rotateStress(stress12, -ply3.angle),
        strain: here,
        stress12,
        strain12,
        mechanicalStrain12: minus(strain12, free12)
      };
    };
    const top = lower;
    lower += ply3.thickness;
    return {
      name: ply3.name,
      angle: ply3.angle,
      top: at4(top),
      middle: at4(top + ply3.thickness / 2),
      bottom: at4(top + ply3.thickness)
    };
  });
}
function warpNotes(laminate2, load, curvature) {
  const unloaded2 = !load.N && !load.M && !load.strain && !load.curvature;
  const kind2 = kindOfShape(curvature, laminate2.thickness);
  if (!unloaded2 || kind2 !== "saddle" && kind2 !== "twist") return [];
  return [
    {
      level: "warning",
      text: `${causeOf(load)} curves the free laminate to a saddle. A panel whose edges would lift by more than its thickness snaps to a cylinder instead, curved about one axis only.`,
      source: "hyer-1981"
    }
  ];
}
function causeOf({ temperatureChange = 0, temperatureGradient = 0, moisture: moisture2 = 0 }) {
  const heat = temperatureChange !== 0 || temperatureGradient !== 0;
  const wet = [moisture2].flat().some((value) => value !== 0);
  if (heat && wet) return "Temperature with moisture";
  return wet ? "Moisture" : "A change of temperature";
}
function stiffness6({ A, B, D }) {
  return Array.from(
    { length: 6 },
    (_, i) => Array.from({ length: 6 }, (_2, j) => {
      const block2 = i < 3 ? j < 3 ? A : B : j < 3 ? B : D;
      return entry(block2, i % 3, j % 3);
    })
  );
}
function vector(values, from) {
  return [values[from] ?? 0, values[from + 1] ?? 0, values[from + 2] ?? 0];
}
function minus(p2, q) {
  return [p2[0] - q[0], p2[1] - q[1], p2[2] - q[2]];
}

// packages/core/src/laminate/edge/edge-peel.ts
var silent = 1e-3;
function edgePeel(laminate2, Ex, state) {
  const { temperatureChange, strain: strain2 } = state;
  const { plies: plies2 } = respond(laminate2, {
    strain: [strain2, null, null],
    curvature: [0, null, 0],
    temperatureChange
  });
  const axial = laminate2.plies.map(({ expansion: expansion2, angle: angle2 }) => {
    const free = [(expansion2?.alpha1 ?? 0) * temperatureChange, (expansion2?.alpha2 ?? 0) * temperatureChange];
    return Math.abs(strain2 - rotateStrain([free[0], free[1], 0], -angle2)[0]);
  });
  const scale = Ex * laminate2.thickness ** 2 * Math.max(...axial);
  return (z0) => {
    const moment = plies2.reduce((sum5, one) => sum5 + momentAbove(one, z0), 0);
    const relative = scale === 0 ? 0 : Math.abs(moment) / scale;
    return { moment, relative, sense: relative < silent ? "undecided" : moment > 0 ? "opening" : "closing" };
  };
}
function momentAbove({ top, bottom }, z0) {
  const from = Math.max(top.z, z0);
  const length2 = bottom.z - from;
  if (length2 <= 0) return 0;
  const slope = (bottom.stress[1] - top.stress[1]) / (bottom.z - top.z);
  const at4 = (z15) => (top.stress[1] + slope * (z15 - top.z)) * (z15 - z0);
  return length2 / 6 * (at4(from) + 4 * at4(from + length2 / 2) + at4(bottom.z));
}

// packages/core/src/laminate/edge/interfaces.ts
function signatures({ plies: plies2 }) {
  const { qbarTable, row } = tabulateQbar(plies2);
  const stiffest2 = Math.max(...qbarTable);
  const hottest = Math.max(...plies2.flatMap((p2) => [p2.expansion?.alpha1 ?? 0, p2.expansion?.alpha2 ?? 0].map(Math.abs)));
  return plies2.map(({ expansion: expansion2, angle: angle2 }, k) => {
    const at4 = (row[k] ?? 0) * ROW;
    const alpha = rotateStrain([expansion2?.alpha1 ?? 0, expansion2?.alpha2 ?? 0, 0], -angle2);
    return [
      ...Array.from(qbarTable.slice(at4, at4 + ROW), (value) => value / stiffest2),
      ...alpha.map((value) => hottest === 0 ? 0 : value / hottest)
    ];
  });
}
function alikeNeighbours(laminate2) {
  const all = signatures(laminate2);
  return (k) => (all[k] ?? []).every((value, i) => near(value, all[k + 1]?.[i] ?? Number.NaN, 1));
}
function isMirrored(laminate2) {
  const all = signatures(laminate2);
  const { plies: plies2, thickness } = laminate2;
  return all.every((one, k) => {
    const j = plies2.length - 1 - k;
    const same4 = one.every((value, i) => near(value, all[j]?.[i] ?? Number.NaN, 1));
    return same4 && near(plies2[k]?.thickness ?? 0, plies2[j]?.thickness ?? 0, thickness);
  });
}

// packages/core/src/laminate/edge/strip-part.ts
function stripPart(part) {
  const known = /* @__PURE__ */ new Map();
  const at4 = ({ strain: strain2, temperatureChange }) => {
    const key = `${strain2} ${temperatureChange}`;
    const before2 = known.get(key);
    if (before2 !== void 0) return before2;
    const { N: NT, M: MT } = freeStrain(part, { temperatureChange });
    const { N, M: M3, ...found } = respond(part, {
      strain: [strain2, null, null],
      curvature: [0, null, 0],
      temperatureChange
    });
    const energy2 = (work(found.strain, N, NT) + work(found.curvature, M3, MT)) / 2;
    const state = { energy: energy2, curvature: found.curvature[1] };
    known.set(key, state);
    return state;
  };
  const bent = respond(part, { strain: [0, null, null], curvature: [0, 1, 0] });
  return { energy: (state) => at4(state).energy, curvature: (state) => at4(state).curvature, bending: bent.M[1] };
}
var work = (x, force, held3) => x[0] * (force[0] - held3[0]) + x[1] * (force[1] - held3[1]) + x[2] * (force[2] - held3[2]);

// packages/core/src/laminate/edge/opening.ts
var kept2 = 0.75;
var noise = 1e-6;
function opening({ laminate: whole2, strip }, cuts, state, temperatureChange, toughness3) {
  const bounds = [0, ...cuts, whole2.plies.length];
  const parts2 = bounds.slice(1).map((end2, i) => stripPart(laminate(whole2.plies.slice(bounds[i] ?? 0, end2))));
  const fronts = cuts.length === 1 ? 1 : 2;
  const [below, above] = [parts2[0] ?? strip, cuts.length === 1 ? parts2[1] : void 0];
  const bending = above === void 0 ? below.bending : 1 / (1 / below.bending + 1 / above.bending);
  const apart2 = (at4) => below.curvature(at4) - (above?.curvature(at4) ?? 0);
  const released = (at4) => (strip.energy(at4) - parts2.reduce((sum5, part) => sum5 + part.energy(at4), 0)) / fronts;
  const pressed = (at4) => bending * apart2(at4) ** 2 / 2;
  const open = squareOf(released, temperatureChange);
  const touching = squareOf((at4) => released(at4) - kept2 * pressed(at4), temperatureChange);
  const branch = (at4) => apart2(at4) < 0 ? touching : open;
  const tension = { strain: 1, temperatureChange: 0 };
  const [perSquare] = branch(tension);
  const modulus = 2 * strip.energy(tension) / whole2.thickness;
  const judged = state ?? tension;
  return {
    fronts,
    touches: apart2(judged) < 0 && pressed(judged) > noise * released(judged),
    modulus,
    partedModulus: modulus - 2 * fronts * perSquare / whole2.thickness,
    perSquare,
    G: state === void 0 ? 0 : Math.max(0, valueAt(branch(state), state.strain)),
    ...toughness3 === void 0 || perSquare <= 0 ? {} : { onset: onsetOf({ open, touching }, (strain2) => apart2({ strain: strain2, temperatureChange }) < 0, toughness3) }
  };
}
var valueAt = ([c2, c1, c0], strain2) => (c2 * strain2 + c1) * strain2 + c0;
function squareOf(form, temperatureChange) {
  const c2 = form({ strain: 1, temperatureChange: 0 });
  if (temperatureChange === 0) return [c2, 0, 0];
  const at4 = (strain2) => form({ strain: strain2, temperatureChange });
  return [c2, (at4(1) - at4(-1)) / 2, at4(0)];
}
function onsetOf({ open, touching }, closes, Gc) {
  if ((closes(0) ? touching : open)[2] >= Gc) return { tension: 0, compression: 0 };
  const root2 = ([c2, c1, c0], side2) => (side2 * Math.sqrt(c1 * c1 + 4 * c2 * (Gc - c0)) - c1) / (2 * c2);
  const on = (side2) => {
    const strain2 = root2(open, side2);
    return side2 * strain2 > 0 && !closes(strain2) ? strain2 : root2(touching, side2);
  };
  return { tension: on(1), compression: on(-1) };
}

// packages/core/src/laminate/edge/edge-delamination.ts
function edgeDelamination(laminate2, options = {}) {
  const { strain: strain2 = 0, temperatureChange = 0, toughness: toughness3 } = options;
  const state = { strain: strain2, temperatureChange };
  demand2(state, toughness3);
  const count = laminate2.plies.length;
  const mirrored = isMirrored(laminate2);
  const alike5 = alikeNeighbours(laminate2);
  const unit2 = { strain: 1, temperatureChange: 0 };
  const whole2 = { laminate: laminate2, strip: stripPart(laminate2) };
  const Ex = 2 * whole2.strip.energy(unit2) / laminate2.thickness;
  const loaded = strain2 !== 0 || temperatureChange !== 0;
  const opened = (cuts) => opening(whole2, cuts, loaded ? state : void 0, temperatureChange, toughness3);
  const peelAt = edgePeel(laminate2, Ex, loaded ? state : unit2);
  const interfaces = [];
  let z15 = -laminate2.thickness / 2;
  for (let below = 1; below < count; below++) {
    const [lower, upper] = [laminate2.plies[below - 1], laminate2.plies[below]];
    if (lower === void 0 || upper === void 0) break;
    z15 += lower.thickness;
    const equal = alike5(below - 1);
    const cuts = [Math.min(below, count - below), Math.max(below, count - below)];
    interfaces.push({
      below,
      z: z15,
      angles: [lower.angle, upper.angle],
      alike: equal,
      ...equal ? {} : { single: opened([below]) },
      ...equal || !mirrored ? {} : { pair: opened(cuts) },
      peel: peelAt(z15)
    });
  }
  const critical = worst(interfaces, loaded ? (one) => one.G : (one) => one.perSquare);
  return {
    interfaces,
    ...critical === void 0 ? {} : { critical },
    midPlanePeel: peelAt(0),
    notes: uniqueNotes([
      ...laminate2.notes,
      ...unbalancedNotes(laminate2, interfaces),
      ...contactNotes(interfaces),
      ...notesOn(interfaces, critical?.onset?.tension === 0)
    ]),
    sources: uniqueSources(laminate2.sources, ["obrien-1982", "pagano-pipes-1971", "selvage-2026-derivation"])
  };
}
function demand2({ strain: strain2, temperatureChange }, toughness3) {
  if (!(Number.isFinite(strain2) && Number.isFinite(temperatureChange))) {
    fail({
      code: "out-of-range",
      message: `the strain is ${strain2} and the temperature change ${temperatureChange} K`,
      allowed: "finite numbers"
    });
  }
  if (toughness3 !== void 0 && !(toughness3 > 0 && Number.isFinite(toughness3))) {
    fail({ code: "out-of-range", message: `the toughness is ${toughness3} J/m\xB2`, allowed: "a finite value above 0" });
  }
}
var same = 1e-9;
function worst(interfaces, by) {
  let found;
  for (const { below, single: single2, pair: pair2 } of interfaces) {
    for (const [opening2, one] of [["single", single2], ["pair", pair2]]) {
      if (one === void 0 || found !== void 0 && by(one) <= by(found) * (1 + same)) continue;
      found = { below, opening: opening2, ...one };
    }
  }
  return found;
}
function notesOn(interfaces, heatAlone) {
  const notes4 = [
    {
      level: "assumption",
      text: "A crack from the edge that is longer than a ply is thick, in a wide laminate strained evenly along its edge. Where a sound edge first cracks, in which mode, and bending loads are not covered.",
      source: "obrien-1982"
    },
    {
      level: "assumption",
      text: "G is per front. A toughness that was reduced from a symmetric specimen with the formula for one surface belongs to twice the G of a pair.",
      source: "obrien-1982"
    }
  ];
  if (interfaces.some(({ alike: alike5 }) => alike5)) {
    notes4.push({
      level: "assumption",
      text: "Between plies that are alike in laminate axes no delamination is counted: nothing there makes an edge crack start."
    });
  }
  if (heatAlone) {
    notes4.push({
      level: "warning",
      text: "Residual stress from the change of temperature alone releases the given toughness: the edge may part without load."
    });
  }
  return notes4;
}
function contactNotes(interfaces) {
  if (!interfaces.some(({ single: single2, pair: pair2 }) => single2?.touches === true || pair2?.touches === true)) return [];
  return [
    {
      level: "assumption",
      text: "Some parts would bend into each other. Their faces then touch at the edge and stand apart behind it, which keeps three quarters of what bending would release; friction, which would keep more, is not counted.",
      source: "selvage-2026-derivation"
    }
  ];
}
var noticeable = 1e-6;
function unbalancedNotes({ plies: plies2 }, interfaces) {
  const parts2 = interfaces.flatMap(
    ({ below, alike: alike5 }) => alike5 ? [] : [plies2.slice(0, below), plies2.slice(below)].map((part) => stiffness(laminate(part)).A)
  );
  const share2 = Math.max(0, ...parts2.map((A) => Math.abs(entry(A, 0, 2) / entry(A, 0, 0))));
  if (share2 <= noticeable) return [];
  return [
    {
      level: "assumption",
      text: `Parts that are not balanced shear once they part (A16/A11 up to ${share2.toPrecision(2)}), which is counted as release; a wide plate may hinder it, and G is then smaller.`
    }
  ];
}

// packages/core/src/laminate/engineering-constants.ts
function engineeringConstants(stiffness2) {
  const inPlane2 = 1 / stiffness2.thickness;
  const flexural = 12 / stiffness2.thickness ** 3;
  return {
    inPlane: constants(packed(stiffness2.a), inPlane2),
    flexural: constants(packed(stiffness2.d), flexural),
    inPlaneRestrained: constants(inverse2(stiffness2.A), inPlane2),
    flexuralRestrained: constants(inverse2(stiffness2.D), flexural),
    notes: stiffness2.notes,
    sources: stiffness2.sources
  };
}
function inverse2(m) {
  const out = new Float64Array(6);
  if (!invertSpd3(packed(m), 0, out, 0)) {
    fail({
      code: "not-admissible",
      message: "a stiffness is not positive definite",
      allowed: "a stiffness as `stiffness` gives it"
    });
  }
  return out;
}
function constants(compliance, scale) {
  const out = new Float64Array(7);
  writeConstants(compliance, 0, scale, out, 0);
  if (!out.every(Number.isFinite)) {
    fail({
      code: "not-computable",
      message: "the engineering constants are not finite numbers",
      allowed: "moduli whose inverse a number of 64 bits can hold"
    });
  }
  const k = (i) => out[i] ?? 0;
  return { Ex: k(0), Ey: k(1), Gxy: k(2), nuxy: k(3), nuyx: k(4), etaxyx: k(5), etaxyy: k(6) };
}

// packages/core/src/laminate/free-expansion.ts
function thermalExpansionOf(laminate2) {
  const { strain: strain2, curvature, notes: notes4, sources } = respond(laminate2, { temperatureChange: 1 });
  return { strain: strain2, curvature, notes: notes4, sources };
}
function moistureExpansionOf(laminate2) {
  const { strain: strain2, curvature, notes: notes4, sources } = respond(laminate2, { moisture: 1 });
  return { strain: strain2, curvature, notes: notes4, sources };
}

// packages/core/src/laminate/lamination-parameters.ts
function laminationParameters(laminate2) {
  const { plies: plies2 } = laminate2;
  const table4 = new Float64Array(plies2.length * ROW);
  plies2.forEach(({ angle: angle2 }, k) => {
    const { sin: s, cos: c } = sinCosDegrees(2 * angle2);
    table4.set([c, s, (c - s) * (c + s), 2 * s * c], k * ROW);
  });
  const moments = new Float64Array(3 * ROW);
  const row = Int32Array.from(plies2.keys());
  const thickness = Float64Array.from(plies2, (ply3) => ply3.thickness);
  const h = sumStack(table4, row, thickness, 0, plies2.length, moments, 0);
  const four = (at4, scale) => {
    const value = (i) => (moments[at4 + i] ?? 0) * scale;
    return [value(0), value(1), value(2), value(3)];
  };
  return {
    A: four(0, 1 / h),
    B: four(ROW, 4 / h ** 2),
    D: four(2 * ROW, 12 / h ** 3),
    notes: severalMaterials(laminate2) ? [...laminate2.notes, note] : laminate2.notes,
    sources: uniqueSources(laminate2.sources, ["tsai-hahn-1980", "tsai-pagano-1968"])
  };
}
var note = {
  level: "warning",
  text: "The plies are of different materials: the lamination parameters describe their angles only, the stiffness does not follow from them.",
  source: "tsai-hahn-1980"
};
function severalMaterials({ plies: plies2 }) {
  const [first2] = plies2;
  return plies2.some(
    (ply3) => ply3.E1 !== first2?.E1 || ply3.E2 !== first2.E2 || ply3.G12 !== first2.G12 || ply3.nu12 !== first2.nu12
  );
}

// packages/core/src/laminate/orientation-code-cursor.ts
var spaces = /\s*/y;
function take(cursor, pattern2) {
  pattern2.lastIndex = cursor.at;
  const found = pattern2.exec(cursor.code) ?? void 0;
  if (found) cursor.at += found[0].length;
  return found;
}
function skip(cursor) {
  take(cursor, spaces);
}

// packages/core/src/laminate/orientation-code-faults.ts
var mostPlies = 2e3;
function limit(cursor, plies2, from) {
  if (plies2 <= mostPlies) return;
  fail({
    code: "too-large",
    message: `the orientation code stands for ${plies2} plies or more, the limit is ${mostPlies}`,
    allowed: `up to ${mostPlies} plies`,
    within: { offset: from, length: Math.max(1, cursor.at - from) }
  });
}
function halfFault(cursor, { offset, length: length2 }, repeated) {
  const text3 = cursor.code.slice(offset, offset + length2);
  return fault(
    offset,
    length2,
    `${text3} must be the last ply of a symmetric code`,
    "a half ply at the end of [...]s",
    repeated ? "write a repeated code out up to the mid-plane, then `s`" : "put `s` behind the bracket, or remove `~`"
  );
}
function plyFault(cursor, start) {
  const { code, at: at4 } = cursor;
  const found = code[at4];
  if (found === void 0)
    return fault(Math.max(0, at4 - 1), 1, "the orientation code ends where a ply should stand", "an angle");
  if (found === "/" || found === "]" || found === ")") {
    return fault(at4, 1, `a ply is missing before \`${found}\``, "an angle in degrees");
  }
  if (found === "[")
    return fault(at4, 1, "a second `[` stands inside the code", "`(` for a group", "write groups as (0/90)2");
  const length2 = Math.max(1, at4 + 1 - start);
  return fault(
    at4 + 1 - length2,
    length2,
    `\`${code.slice(at4 + 1 - length2, at4 + 1)}\` is not an angle`,
    "an angle in degrees such as 45, -45 or \xB145"
  );
}
function separatorFault(cursor, closing, open) {
  const { code, at: at4 } = cursor;
  const found = code[at4];
  if (found === void 0)
    return fault(open, 1, `\`${code[open]}\` is not closed`, `\`${closing}\``, `add \`${closing}\``);
  if (found === "," || found === ";") {
    const allowed = "`/` between plies, a point in a decimal number";
    return fault(
      at4,
      1,
      `\`${found}\` stands between two plies`,
      allowed,
      "write `/`, or a point where a decimal number is meant"
    );
  }
  if (found === "]") return fault(open, 1, "`(` is not closed before `]`", "`)`", "add `)`");
  if (found === ")") return fault(at4, 1, "`)` closes a group that was not opened", `\`/\` or \`${closing}\``);
  return fault(at4, 1, `\`${found}\` is not understood here`, `\`/\` or \`${closing}\``);
}
function afterSuffix(cursor) {
  const { code, at: at4 } = cursor;
  const rest = code.slice(at4).trimEnd();
  const hint = /^\d/.test(rest) ? "a repeat stands before `s`, as in ]2s" : void 0;
  return fault(at4, rest.length, `\`${rest}\` is not understood behind the code`, "a repeat, `s` or `T`", hint);
}
function fault(offset, length2, message, allowed, hint) {
  return fail({
    code: "orientation-code",
    message,
    ...allowed === void 0 ? {} : { allowed },
    ...hint === void 0 ? {} : { hint },
    within: { offset, length: length2 }
  });
}

// packages/core/src/laminate/orientation-code-parse.ts
var mostCharacters = 1e4;
var deepest = 20;
var pair = /±|∓|\+\/?[-−–]|[-−–]\/?\+/y;
var sign = /[+\-−–]/y;
var number = /\d+(?:\.\d+)?|\.\d+/y;
var degreeSign = /°/y;
var suffixName = /_?[A-Za-z][A-Za-z0-9-]*(?:_[A-Za-z][A-Za-z0-9-]*)*/y;
var repeat = /_\s*(\d+)/y;
var bar = /~/y;
var wholeSuffix = /(?:_?\s*(\d+))?\s*(?:_?\s*([sSTt]))?/y;
var groupSuffix = /(?:_?\s*(\d+))?\s*(?:_?\s*([sS]))?/y;
function parseOrientationCode(code) {
  if (code.length > mostCharacters) {
    fail({
      code: "too-large",
      message: `the orientation code has ${code.length} characters, the limit is ${mostCharacters}`,
      within: { offset: 0, length: code.length }
    });
  }
  const cursor = { code, at: 0 };
  skip(cursor);
  const open = cursor.at;
  if (code[open] !== "[") {
    const at4 = Math.min(open, Math.max(0, code.length - 1));
    fault(at4, 1, "an orientation code starts with `[`", "`[`", `write [${code.trim() || "0/90"}]`);
  }
  const inside = sequence(cursor, "]", 0);
  const plies2 = finish(cursor, inside, wholeSuffix, open);
  skip(cursor);
  if (cursor.at < code.length) afterSuffix(cursor);
  return plies2.map(({ half: _, ...item }) => item);
}
function sequence(cursor, closing, depth) {
  const open = cursor.at++;
  if (depth > deepest) fault(open, 1, `groups are nested ${depth} deep, the limit is ${deepest}`);
  const plies2 = [];
  while (true) {
    skip(cursor);
    plies2.push(...cursor.code[cursor.at] === "(" ? group(cursor, depth) : ply2(cursor));
    limit(cursor, plies2.length, open);
    skip(cursor);
    const next = cursor.code[cursor.at];
    if (next === "/") {
      cursor.at++;
    } else if (next === closing) {
      cursor.at++;
      return plies2;
    } else {
      separatorFault(cursor, closing, open);
    }
  }
}
function group(cursor, depth) {
  const open = cursor.at;
  return finish(cursor, sequence(cursor, ")", depth + 1), groupSuffix, open);
}
function ply2(cursor) {
  const offset = cursor.at;
  const both = take(cursor, pair)?.[0];
  const lone = both === void 0 ? take(cursor, sign)?.[0] : void 0;
  skip(cursor);
  const digits = take(cursor, number)?.[0];
  if (digits === void 0) return plyFault(cursor, offset);
  take(cursor, degreeSign);
  const size4 = Number(digits);
  if (size4 > 180) {
    fault(offset, cursor.at - offset, `the angle ${digits} is out of range`, "-180 to 180 degrees");
  }
  const end2 = cursor.at;
  skip(cursor);
  const material2 = take(cursor, suffixName)?.[0].replace(/^_/, "");
  if (material2 === void 0) cursor.at = end2;
  const count = plyRepeat(cursor, offset, both === void 0 ? void 0 : digits + (material2 ?? ""));
  const half = take(cursor, bar) !== void 0;
  const length2 = cursor.at - offset;
  if (half && (both !== void 0 || count > 1)) {
    fault(offset, length2, "a half ply `~` must be a single ply", void 0, "write the last ply by itself, then `~`");
  }
  const make = (angle2) => ({
    // Adding 0 turns -0 into 0.
    angle: angle2 + 0,
    ...material2 === void 0 ? {} : { material: material2 },
    mirrored: false,
    offset,
    length: length2,
    half
  });
  if (both !== void 0) {
    const plusFirst = both === "\xB1" || both.startsWith("+");
    return plusFirst ? [make(size4), make(-size4)] : [make(-size4), make(size4)];
  }
  return Array.from({ length: count }, () => make(lone === void 0 || lone === "+" ? size4 : -size4));
}
function plyRepeat(cursor, offset, ofPair) {
  const start = cursor.at;
  const found = take(cursor, repeat);
  if (!found) return 1;
  if (ofPair !== void 0) {
    const k = found[1];
    fault(
      offset,
      cursor.at - offset,
      `a repeat after \xB1 can be read in two ways`,
      "a repeat after a single angle or after `)`",
      `write (\xB1${ofPair})${k} or ${ofPair}_${k}/-${ofPair}_${k}`
    );
  }
  return counted(cursor, found[1] ?? "", start);
}
function counted(cursor, digits, start) {
  const count = Number(digits);
  if (count === 0) fault(start, cursor.at - start, "a repeat of 0 leaves no ply", "a repeat of 1 or more");
  limit(cursor, count, start);
  return count;
}
function finish(cursor, plies2, suffix, open) {
  const end2 = cursor.at;
  skip(cursor);
  const start = cursor.at;
  const found = take(cursor, suffix);
  if (found?.[0] === "") cursor.at = end2;
  const count = found?.[1] === void 0 ? 1 : counted(cursor, found[1], start);
  const symmetric3 = found?.[2]?.toLowerCase() === "s";
  const half = plies2.find((piece, k) => piece.half && !(symmetric3 && count === 1 && k === plies2.length - 1));
  if (half) halfFault(cursor, half, symmetric3 && count > 1);
  limit(cursor, plies2.length * count * (symmetric3 ? 2 : 1), open);
  const repeated = Array.from({ length: count }, () => plies2).flat();
  if (!symmetric3) return repeated;
  const last = repeated[repeated.length - 1];
  const image = (last?.half ? repeated.slice(0, -1) : repeated).toReversed();
  return [...repeated, ...image.map((piece) => ({ ...piece, mirrored: true }))].map((piece) => ({
    ...piece,
    half: false
  }));
}

// packages/core/src/laminate/orientation-code-print.ts
var searched = 48;
function printOrientationCode(items) {
  const plies2 = withSuffixes(items);
  if (plies2.length === 0) return "[]";
  const candidates = [...wrappings(plies2).map(({ inner, suffix }) => `[${inner()}]${suffix}`), `[${body(plies2)}]`];
  return shortest(candidates);
}
function withSuffixes(items) {
  const several = new Set(items.map((item) => item.material)).size > 1;
  const names4 = several ? suffixNames(items) : /* @__PURE__ */ new Map();
  return items.map(({ angle: given, material: material2 }) => {
    const angle2 = fibreAngle(given);
    const suffix = material2 === void 0 ? "" : names4.get(material2) ?? "";
    return { angle: angle2, suffix, text: decimal(angle2) + suffix };
  });
}
function suffixNames(items) {
  const names4 = /* @__PURE__ */ new Map();
  const used = /* @__PURE__ */ new Set();
  for (const { material: material2 } of items) {
    if (material2 === void 0 || names4.has(material2)) continue;
    const plain6 = material2.replace(/_(?![A-Za-z])|[^A-Za-z0-9_-]/g, "-").replace(/^(?![A-Za-z])/, "m");
    let name = plain6;
    for (let k = 2; used.has(name); k++) name = `${plain6}-${k}`;
    used.add(name);
    names4.set(material2, name);
  }
  return names4;
}
function decimal(value) {
  const text3 = String(value);
  return text3.includes("e") ? value.toFixed(20).replace(/\.?0+$/, "").replace(/^-0$/, "0") : text3;
}
function wrappings(plies2, inside = body) {
  const n = plies2.length;
  const found = [];
  const period = smallestPeriod(plies2);
  const repeated = { inner: () => inside(plies2.slice(0, period)), suffix: String(n / period) };
  if (period === 1 && n > 1) return [repeated];
  if (n > 2 && isMirrored2(plies2)) {
    const half = plies2.slice(0, Math.floor(n / 2));
    if (n % 2 === 0) {
      const sub = smallestPeriod(half);
      found.push({
        inner: () => inside(half.slice(0, sub)),
        suffix: sub < half.length ? `${half.length / sub}s` : "s"
      });
    } else {
      found.push({ inner: () => `${inside(half)}/${plies2[half.length]?.text ?? ""}~`, suffix: "s" });
    }
  }
  if (period < n) found.push(repeated);
  return found;
}
function body(plies2) {
  if (plies2.length > searched) return withRuns(plies2);
  const known = /* @__PURE__ */ new Map();
  const best = (part, from) => {
    const key = `${from} ${part.length}`;
    const before2 = known.get(key);
    if (before2 !== void 0) return before2;
    let text3 = part.length > 1 ? unit(part) ?? "" : part[0]?.text ?? "";
    if (text3 === "") {
      const splits = Array.from({ length: part.length - 1 }, (_, i) => {
        const k = part.length - 1 - i;
        return `${best(part.slice(0, k), from)}/${best(part.slice(k), from + k)}`;
      });
      text3 = shortest([...groups(part, (inner) => best(inner, from)), ...splits]);
    }
    known.set(key, text3);
    return text3;
  };
  return best(plies2, 0);
}
function groups(part, inside) {
  return wrappings(part, inside).map(({ inner, suffix }) => `(${inner()})${suffix}`);
}
function unit(plies2) {
  const [first2, second2] = plies2;
  if (first2 === void 0 || second2 === void 0) return void 0;
  if (plies2.every((ply3) => ply3.text === first2.text)) return `${first2.text}_${plies2.length}`;
  const opposite2 = plies2.length === 2 && first2.angle === -second2.angle && first2.suffix === second2.suffix;
  if (!opposite2) return void 0;
  return first2.angle > 0 ? `\xB1${first2.text}` : `\u2213${second2.text}`;
}
function withRuns(plies2) {
  const parts2 = [];
  for (let k = 0; k < plies2.length; ) {
    let end2 = k + 1;
    while (plies2[end2]?.text === plies2[k]?.text && end2 < plies2.length) end2++;
    if (end2 === k + 1 && plies2[k + 2]?.text !== plies2[k + 1]?.text && unit(plies2.slice(k, k + 2))) end2 = k + 2;
    const part = plies2.slice(k, end2);
    parts2.push(unit(part) ?? plies2[k]?.text ?? "");
    k = end2;
  }
  return parts2.join("/");
}
function isMirrored2(plies2) {
  return plies2.every((ply3, k) => ply3.text === plies2[plies2.length - 1 - k]?.text);
}
function smallestPeriod(plies2) {
  for (let p2 = 1; p2 <= plies2.length / 2; p2++) {
    if (plies2.length % p2 === 0 && plies2.every((ply3, k) => k < p2 || ply3.text === plies2[k - p2]?.text)) return p2;
  }
  return plies2.length;
}
function shortest(texts) {
  const least2 = Math.min(...texts.map((text3) => text3.length));
  const parts2 = (text3) => text3.split("/").length;
  return texts.filter((text3) => text3.length === least2).reduce((best, text3) => parts2(text3) < parts2(best) ? text3 : best);
}

// packages/core/src/laminate/plate/ellipse-membrane.ts
import { Matrix as Matrix2 } from "ml-matrix";
function ellipseMembrane(A, samples) {
  const [n, held3] = [samples.slope[0].rows, 2 * samples.held[0].rows];
  const pairs = Array.from({ length: n }, (_, i) => Array.from({ length: n - i }, (__, j) => [i, i + j])).flat();
  const table4 = strainColumns(A, samples, pairs).gram();
  const last = table4.rows - 1;
  const B = table4.subMatrix(0, held3 - 1, held3, last);
  const moved = factorsOf(table4.subMatrix(0, held3 - 1, 0, held3 - 1)).solve(B);
  const F = alike2(Matrix2.sub(table4.subMatrix(held3, last, held3, last), B.transposeMultiply(moved)), pairs, n);
  const products = (c) => Matrix2.columnVector(pairs.map(([i, j]) => (i === j ? 1 : 2) * c.get(i, 0) * c.get(j, 0)));
  return {
    stretching: (c) => {
      const sums = F.mmul(products(c));
      const h = new Matrix2(n, n);
      pairs.forEach(([i, j], p2) => {
        h.set(i, j, sums.get(p2, 0)).set(j, i, sums.get(p2, 0));
      });
      return h;
    },
    displacements: (c) => {
      const d = moved.mmul(products(c)).mul(-1).getColumn(0);
      return new Matrix2([d.slice(0, held3 / 2), d.slice(held3 / 2)]);
    }
  };
}
function strainColumns(A, { weight, slope, held: held3 }, pairs) {
  const C = factorsOf(new Matrix2(A)).lowerTriangularMatrix;
  const [c11, c21, c31] = [C.get(0, 0), C.get(1, 0), C.get(2, 0)];
  const [c22, c32, c33] = [C.get(1, 1), C.get(2, 1), C.get(2, 2)];
  const displaced = held3[0].rows;
  const columns = new Matrix2(3 * weight.length, 2 * displaced + pairs.length);
  weight.forEach((share2, k) => {
    const root2 = Math.sqrt(share2);
    const put = (column, x, y, xy) => {
      columns.set(3 * k, column, root2 * (c11 * x + c21 * y + c31 * xy));
      columns.set(3 * k + 1, column, root2 * (c22 * y + c32 * xy));
      columns.set(3 * k + 2, column, root2 * c33 * xy);
    };
    for (let s = 0; s < displaced; s++) {
      const [x, y] = [held3[0].get(s, k), held3[1].get(s, k)];
      put(s, x, 0, y);
      put(displaced + s, 0, y, x);
    }
    pairs.forEach(([i, j], p2) => {
      const [xi, yi, xj, yj] = [slope[0].get(i, k), slope[1].get(i, k), slope[0].get(j, k), slope[1].get(j, k)];
      put(2 * displaced + p2, xi * xj / 2, yi * yj / 2, (xi * yj + yi * xj) / 2);
    });
  });
  return columns;
}
function alike2(table4, pairs, n) {
  const place = new Matrix2(n, n);
  pairs.forEach(([i, j], p2) => {
    place.set(i, j, p2).set(j, i, p2);
  });
  const at4 = (one, other) => table4.get(place.get(...one), place.get(...other));
  const mean3 = new Matrix2(pairs.length, pairs.length);
  pairs.forEach(([i, j], p2) => {
    pairs.forEach(([k, l], q) => {
      const sum5 = table4.get(p2, q) + at4([i, k], [j, l]) + at4([i, l], [j, k]);
      mean3.set(p2, q, sum5 / 3);
    });
  });
  return mean3;
}
var factorsOf = (m) => choleskyOf(m) ?? fail({
  code: "not-computable",
  message: "the membrane energy of the buckled plies is not positive definite in numbers of 64 bits",
  allowed: "axes and stiffnesses less far apart"
});

// packages/core/src/laminate/plate/ellipse-samples.ts
import { Matrix as Matrix4 } from "ml-matrix";

// packages/core/src/laminate/plate/disk-points.ts
import { EigenvalueDecomposition, Matrix as Matrix3 } from "ml-matrix";
function diskPoints(power) {
  const around = power / 2 + 1;
  const all = gaussPoints(power / 4 + 1).flatMap(({ at: at4, weight }) => {
    const r = Math.sqrt((1 + at4) / 2);
    return Array.from({ length: around }, (_, j) => {
      const angle2 = Math.PI * (j + 0.5) / around;
      return { x: r * Math.cos(angle2), y: r * Math.sin(angle2), weight: weight * Math.PI / (2 * around) };
    });
  });
  return {
    x: Float64Array.from(all, ({ x }) => x),
    y: Float64Array.from(all, ({ y }) => y),
    weight: Float64Array.from(all, ({ weight }) => weight)
  };
}
function gaussPoints(n) {
  const recursion = new Matrix3(n, n);
  for (let k = 1; k < n; k++) {
    const beside = k / Math.sqrt(4 * k * k - 1);
    recursion.set(k - 1, k, beside).set(k, k - 1, beside);
  }
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(recursion, { assumeSymmetric: true });
  return realEigenvalues.map((at4, i) => ({ at: at4, weight: 2 * eigenvectorMatrix.get(0, i) ** 2 }));
}

// packages/core/src/laminate/plate/polynomial.ts
function multiply(p2, q) {
  const terms = /* @__PURE__ */ new Map();
  for (const s of p2) {
    for (const t of q) {
      const [i, j] = [s.i + t.i, s.j + t.j];
      const term = terms.get(`${i} ${j}`);
      if (term === void 0) terms.set(`${i} ${j}`, { c: s.c * t.c, i, j });
      else term.c += s.c * t.c;
    }
  }
  return [...terms.values()];
}
var times2 = (p2, factor) => p2.map(({ c, i, j }) => ({ c: c * factor, i, j }));
var xDerivative = (p2) => p2.filter(({ i }) => i > 0).map(({ c, i, j }) => ({ c: c * i, i: i - 1, j }));
var yDerivative = (p2) => p2.filter(({ j }) => j > 0).map(({ c, i, j }) => ({ c: c * j, i, j: j - 1 }));
function valuesAt({ x, y }, highest) {
  const powers = (of) => Array.from({ length: highest + 1 }, (_, n) => of.map((value) => value ** n));
  const [xs, ys] = [powers(x), powers(y)];
  return (p2, factor) => {
    const sum5 = new Float64Array(x.length);
    for (const { c, i, j } of p2) {
      const [xi, yj] = [xs[i] ?? [], ys[j] ?? []];
      for (let k = 0; k < sum5.length; k++) sum5[k] = (sum5[k] ?? 0) + factor * c * (xi[k] ?? 0) * (yj[k] ?? 0);
    }
    return sum5;
  };
}
function diskIntegral(p2, q) {
  let sum5 = 0;
  for (const s of p2) {
    for (const t of q) {
      const [i, j] = [s.i + t.i, s.j + t.j];
      if (i % 2 === 0 && j % 2 === 0) sum5 += s.c * t.c * even(i / 2, j / 2);
    }
  }
  return sum5;
}
function even(p2, q) {
  let value = Math.PI;
  for (let k = 1; k <= p2; k++) value *= (2 * k - 1) / 2;
  for (let k = 1; k <= q; k++) value *= (2 * k - 1) / 2;
  for (let k = 2; k <= p2 + q + 1; k++) value /= k;
  return value;
}

// packages/core/src/laminate/plate/ellipse-shapes.ts
var deflectionPower = 6;
var inPlanePower = 7;
var rim = [
  { c: 1, i: 0, j: 0 },
  { c: -1, i: 2, j: 0 },
  { c: -1, i: 0, j: 2 }
];
function shapes(factor, power, parity) {
  const found = [];
  for (let sum5 = parity; sum5 <= power; sum5 += 2) {
    for (let i = 0; i <= sum5; i++) found.push(multiply(factor, [{ c: 1, i, j: sum5 - i }]));
  }
  return found;
}
var deflectionShapes = (parity) => shapes(multiply(rim, rim), deflectionPower, parity);
var inPlaneShapes = () => shapes(rim, inPlanePower, 1);
var shapePower = Math.max(deflectionPower + 4, inPlanePower + 2);
var energyPower = 4 * (deflectionPower + 3);

// packages/core/src/laminate/plate/ellipse-samples.ts
function ellipseSamples(slimness, parity) {
  const points4 = diskPoints(energyPower);
  const at4 = valuesAt(points4, shapePower);
  const table4 = (shapes2, factor) => new Matrix4(shapes2.map((p2) => at4(p2, factor)));
  const [alpha, beta] = [slimness, 1 / slimness];
  const w = deflectionShapes(parity);
  const [wx, wy] = [w.map(xDerivative), w.map(yDerivative)];
  const held3 = inPlaneShapes();
  return {
    weight: points4.weight,
    w: table4(w, 1),
    slope: [table4(wx, alpha), table4(wy, beta)],
    curvature: [
      table4(wx.map(xDerivative), -alpha * alpha),
      table4(wy.map(yDerivative), -beta * beta),
      table4(wx.map(yDerivative), -2 * alpha * beta)
    ],
    held: [table4(held3.map(xDerivative), alpha), table4(held3.map(yDerivative), beta)]
  };
}

// packages/core/src/laminate/plate/ellipse-tables.ts
import { Matrix as Matrix5 } from "ml-matrix";
function bendingTable(D, slimness, parity) {
  const [alpha, beta] = [slimness, 1 / slimness];
  return energyTable(
    D,
    deflectionShapes(parity).map((w) => [
      times2(xDerivative(xDerivative(w)), -alpha * alpha),
      times2(yDerivative(yDerivative(w)), -beta * beta),
      times2(yDerivative(xDerivative(w)), -2 * alpha * beta)
    ])
  );
}
function forceTable([Nx, Ny, Nxy], slimness, parity) {
  const N = [
    [Nx, Nxy],
    [Nxy, Ny]
  ];
  return energyTable(
    N,
    deflectionShapes(parity).map((w) => [times2(xDerivative(w), slimness), times2(yDerivative(w), 1 / slimness)])
  );
}
function energyTable(C, e) {
  const table4 = new Matrix5(e.length, e.length);
  e.forEach((one, p2) => {
    e.slice(0, p2 + 1).forEach((other, q) => {
      let sum5 = 0;
      C.forEach((row, i) => {
        row.forEach((value, j) => {
          if (value !== 0) sum5 += value * diskIntegral(one[i] ?? [], other[j] ?? []);
        });
      });
      table4.set(p2, q, sum5).set(q, p2, sum5);
    });
  });
  return table4;
}

// packages/core/src/laminate/plate/ellipse-energy.ts
function ellipseEnergy({ A, D, strain: strain2, slimness }, parity) {
  const samples = ellipseSamples(slimness, parity);
  const { weight, w, slope, curvature, held: held3 } = samples;
  const { stretching, displacements } = ellipseMembrane(A, samples);
  return {
    K: bendingTable(D, slimness, parity),
    S: forceTable(times(A, strain2), slimness, parity),
    stretching,
    fieldsOf: (c) => {
      const of = (table4) => c.transpose().mmul(table4).getRow(0);
      const d = displacements(c);
      const [x, y] = [d.mmul(held3[0]), d.mmul(held3[1])];
      return {
        weight,
        w: of(w),
        slope: [of(slope[0]), of(slope[1])],
        curvature: [of(curvature[0]), of(curvature[1]), of(curvature[2])],
        gradient: [x.getRow(0), y.getRow(0), x.getRow(1), y.getRow(1)]
      };
    }
  };
}

// packages/core/src/laminate/plate/ellipse-path.ts
import { Matrix as Matrix6 } from "ml-matrix";

// packages/core/src/laminate/plate/largest-eigenvalue.ts
import { EigenvalueDecomposition as EigenvalueDecomposition2, inverse as inverse3 } from "ml-matrix";
function largestEigenvalue(S, K) {
  const L = choleskyOf(K)?.lowerTriangularMatrix;
  if (L === void 0 || !S.to2DArray().every((row) => row.every(Number.isFinite))) return void 0;
  const unrooted = inverse3(L);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition2(
    unrooted.mmul(S).mmul(unrooted.transpose()),
    { assumeSymmetric: true }
  );
  const value = Math.max(...realEigenvalues);
  const vector3 = unrooted.transposeMultiply(eigenvectorMatrix.getColumnVector(realEigenvalues.indexOf(value)));
  return { value, vector: vector3 };
}

// packages/core/src/laminate/plate/ellipse-path.ts
var firstStep = 1.05;
var longestStep = 2;
function buckledShape(energy2, critical, multiplier, from = justBuckled(energy2, critical, multiplier)) {
  let { multiplier: last, c } = from;
  while (last < multiplier) {
    last = Math.min(multiplier, last * longestStep);
    c = relaxed(energy2, last, c);
  }
  return { multiplier, c };
}
function justBuckled(energy2, critical, most5) {
  const { K, S, stretching } = energy2;
  const multiplier = Math.min(most5, firstStep * critical);
  const mode = largestEigenvalue(Matrix6.mul(S, -1), K)?.vector;
  if (mode === void 0) {
    return fail({
      code: "not-computable",
      message: "the energy of the buckled plies is beyond what a number of 64 bits can hold",
      allowed: "axes, strains and stiffnesses less far apart"
    });
  }
  const ratio = mode.dot(K.mmul(mode)) / mode.dot(stretching(mode).mmul(mode));
  const size4 = Math.sqrt(Math.max(0, multiplier / critical - 1) * ratio / 2);
  return { multiplier, c: relaxed(energy2, multiplier, mode.mul(size4)) };
}
var energyAt = (energy2, { multiplier, c }) => stateAt(energy2, linearPart(energy2, multiplier), c).value;
var linearPart = ({ K, S }, multiplier) => Matrix6.add(K, Matrix6.mul(S, multiplier));
function stateAt({ stretching }, linear, c) {
  const h = stretching(c);
  const [force, stretch] = [linear.mmul(c), h.mmul(c)];
  return {
    c,
    value: (c.dot(force) + c.dot(stretch)) / 2,
    gradient: force.add(stretch.mul(2)),
    hessian: h.mul(6).add(linear)
  };
}
function relaxed(energy2, multiplier, start) {
  const linear = linearPart(energy2, multiplier);
  let here = stateAt(energy2, linear, start);
  for (let step4 = 0; step4 < 60; step4++) {
    const move = convex(here.hessian, energy2.K)?.solve(here.gradient);
    if (move === void 0) break;
    const slope = here.gradient.dot(move);
    let next;
    for (let fraction = 1; fraction > shortest2; fraction /= 2) {
      const tried = stateAt(energy2, linear, Matrix6.sub(here.c, Matrix6.mul(move, fraction)));
      if (tried.value <= here.value - 1e-4 * fraction * slope) {
        next = tried;
        break;
      }
    }
    if (next === void 0) break;
    here = next;
    if (slope <= 1e-13 * Math.abs(here.value)) break;
  }
  return here.c;
}
var shortest2 = 1e-6;
function convex(hessian, K) {
  for (let share2 = 0; share2 < 1e6; share2 = share2 === 0 ? 1e-3 : 4 * share2) {
    const factors2 = choleskyOf(Matrix6.add(hessian, Matrix6.mul(K, share2)));
    if (factors2 !== void 0) return factors2;
  }
  return void 0;
}

// packages/core/src/laminate/plate/ellipse-growth.ts
function ellipseGrowth({ A, D }, [a, b], strain2, { multiplier: critical, parity }) {
  const [A0, D0] = [entry(A, 0, 0) + entry(A, 1, 1), entry(D, 0, 0) + entry(D, 1, 1)];
  const W2 = D0 / A0;
  const plate = {
    A: scaled(A, 1 / A0),
    D: scaled(D, 1 / D0),
    strain: vector2(strain2, (value) => value * a * b / W2),
    slimness: Math.sqrt(b / a)
  };
  const energy2 = ellipseEnergy(plate, parity);
  const unit2 = D0 * W2 / (a * b) ** 2;
  return (multiplier, from) => {
    const shape = buckledShape(energy2, critical, multiplier, from?.shape);
    const fields = energy2.fieldsOf(shape.c);
    const [x, y] = [0, 1].map((axis) => -derivative(plate, fields, multiplier, axis) / Math.PI);
    const deflections = Math.sqrt(W2);
    return {
      G: [(x ?? 0) * unit2, (y ?? 0) * unit2],
      energy: energyAt(energy2, shape) * unit2 * a * b,
      deflection: Math.max(...fields.w.map(Math.abs)) * deflections,
      opposite: Math.min(-Math.min(...fields.w), Math.max(...fields.w)) * deflections,
      shape
    };
  };
}
function derivative(plate, { weight, slope, curvature, gradient }, multiplier, axis) {
  const [sx, sy] = slope;
  const [kx, ky, kxy] = curvature;
  const [ux, uy, vx, vy] = gradient;
  const [alongX, alongY] = axis === 0 ? [1, 0] : [0, 1];
  const initial = times(
    plate.A,
    vector2(plate.strain, (value) => value * multiplier)
  );
  let sum5 = 0;
  weight.forEach((share2, k) => {
    const at4 = (values) => values[k] ?? 0;
    const [p2, q] = [at4(sx), at4(sy)];
    const e = [at4(ux) + p2 * p2 / 2, at4(vy) + q * q / 2, at4(uy) + at4(vx) + p2 * q];
    const kappa = [at4(kx), at4(ky), at4(kxy)];
    const [Ae, Dk] = [times(plate.A, e), times(plate.D, kappa)];
    const density = dot(e, Ae) / 2 + dot(initial, e) + dot(kappa, Dk) / 2;
    const N = [Ae[0] + initial[0], Ae[1] + initial[1], Ae[2] + initial[2]];
    const shear2 = alongX * at4(vx) + alongY * at4(uy) + p2 * q;
    const de = [-alongX * (at4(ux) + p2 * p2), -alongY * (at4(vy) + q * q), -shear2];
    const dk = [-2 * alongX * kappa[0], -2 * alongY * kappa[1], -kappa[2]];
    sum5 += share2 * (density + dot(N, de) + dot(Dk, dk));
  });
  return sum5;
}
var dot = (p2, q) => p2[0] * q[0] + p2[1] * q[1] + p2[2] * q[2];
var vector2 = ([x, y, xy], of) => [of(x), of(y), of(xy)];
var scaled = (m, by) => {
  const row = (i) => [entry(m, i, 0) * by, entry(m, i, 1) * by, entry(m, i, 2) * by];
  return [row(0), row(1), row(2)];
};

// packages/core/src/laminate/plate/ellipse-ritz.ts
import { Matrix as Matrix7 } from "ml-matrix";
function buckleEllipse(D, axes, N) {
  const [even3, odd] = [0, 1].map((parity) => largestFactor(D, axes, N, parity));
  const factor = Math.max(even3 ?? 0, odd ?? 0);
  return factor > 0 ? { multiplier: 1 / factor, parity: factor === even3 ? 0 : 1 } : void 0;
}
function largestFactor(D, [a, b], N, parity) {
  const size4 = Math.max(...N.map(Math.abs));
  if (size4 === 0) return 0;
  const scale = entry(D, 0, 0) + entry(D, 1, 1);
  const slimness = Math.sqrt(b / a);
  const bending = Matrix7.div(bendingTable(D, slimness, parity), scale);
  const work2 = Matrix7.div(forceTable(N, slimness, parity), -size4);
  return (largestEigenvalue(work2, bending)?.value ?? Number.NaN) * size4 * a * b / scale;
}

// packages/core/src/laminate/plate/growth-multiplier.ts
var farthest = 20;
var near2 = 1e-6;
function growthMultiplier(release, critical, toughness3) {
  const surplus = (state) => Math.max(...state.G) / toughness3 - 1;
  let low = { x: critical ** 2, f: -1 };
  let high = low;
  for (let times3 = 1.5; high.f < 0; times3 *= 1.7) {
    if (times3 > 1.7 * farthest) return void 0;
    const multiplier = Math.min(times3, farthest) * critical;
    low = high;
    const state = release(multiplier, low.state);
    high = { x: multiplier ** 2, f: surplus(state), state };
  }
  let kept3;
  for (let step4 = 0; ; step4++) {
    const x = (low.x * high.f - high.x * low.f) / (high.f - low.f);
    const state = release(Math.sqrt(x), low.state);
    const f = surplus(state);
    if (Math.abs(f) < near2 || step4 === 40) return { multiplier: Math.sqrt(x), release: state };
    if (f < 0) {
      low = { x, f, state };
      if (kept3 === "high") high = { ...high, f: high.f / 2 };
      kept3 = "high";
    } else {
      high = { x, f, state };
      if (kept3 === "low") low = { ...low, f: low.f / 2 };
      kept3 = "low";
    }
  }
}

// packages/core/src/laminate/shear/matrix2.ts
function inverse22(m11, m12, m22) {
  const det = m11 * m22 - m12 * m12;
  const off = (0 - m12) / det;
  return [
    [m22 / det, off],
    [off, m11 / det]
  ];
}
function demandShearStiffness([[xx, xy], [yx, yy]]) {
  if (Number.isFinite(xx + yy) && xx > 0 && xy === yx && xx * yy - xy * xy > 0) return;
  fail({
    code: "out-of-range",
    message: `H is ${xx}, ${xy}; ${yx}, ${yy} N/m`,
    allowed: "a finite, symmetric and positive definite shear stiffness"
  });
}

// packages/core/src/laminate/shear/strip-stiffness.ts
function stripStiffness({ A, B, D }) {
  const two = (m) => [entry(m, 0, 0), entry(m, 0, 2), entry(m, 2, 2)];
  const [A11, A16, A66] = two(A);
  const [B11, B16, B66] = two(B);
  const [D11, D16, D66] = two(D);
  const [[a11, a16], [, a66]] = inverse22(A11, A16, A66);
  const x = [a11 * B11 + a16 * B16, a16 * B11 + a66 * B16];
  const xy = [a11 * B16 + a16 * B66, a16 * B16 + a66 * B66];
  return {
    D11: D11 - B11 * x[0] - B16 * x[1],
    D16: D16 - B11 * xy[0] - B16 * xy[1],
    D66: D66 - B16 * xy[0] - B66 * xy[1]
  };
}

// packages/core/src/laminate/shear/ply-shear.ts
var assumedNu23 = 0.4;
function plyShear(ply3) {
  const unidirectional = !ply3.core && !isIsotropic(ply3) && !isCloth(ply3);
  const nu23 = ply3.nu23 ?? assumedNu23;
  const G13 = ply3.G13 ?? ply3.G12;
  const G23 = ply3.G23 ?? (unidirectional ? ply3.E2 / (2 * (1 + nu23)) : ply3.G12);
  const across2 = unidirectional ? `E2/(2 (1 + ${ply3.nu23 === void 0 ? "an assumed " : ""}${nu23}))` : "G12";
  const assumed = [
    ...ply3.G13 === void 0 ? ["G13 = G12"] : [],
    ...ply3.G23 === void 0 ? [`G23 = ${across2}`] : []
  ];
  return {
    G13,
    G23,
    notes: assumed.length === 0 ? [] : [{ level: "assumption", text: `${ply3.name}: shear through the thickness with ${assumed.join(" and ")}.` }]
  };
}
function shearStiffnessOf(ply3) {
  const { G13, G23 } = plyShear(ply3);
  const { sin: s, cos: c } = sinCosDegrees(ply3.angle);
  return [c * c * G13 + s * s * G23, c * s * (G13 - G23), s * s * G13 + c * c * G23];
}

// packages/core/src/laminate/shear/shear-flow.ts
function shearFlow(laminate2) {
  const { b, d } = stiffness(laminate2);
  const { qbarTable, row } = tabulateQbar(laminate2.plies);
  let lower = -laminate2.thickness / 2;
  let passed = zero;
  return laminate2.plies.map(({ thickness }, k) => {
    const Qbar = symmetric(qbarTable, (row[k] ?? 0) * ROW);
    const bending = product(Qbar, d);
    const slope = sum3(product(Qbar, b), bending, lower);
    const flow = { lower, thickness, coefficients: [passed, slope, sum3(zero, bending, 0.5)] };
    passed = flowAt(flow, thickness);
    lower += thickness;
    return flow;
  });
}
function flowAt({ coefficients: [at0, at1, at22] }, s) {
  return sum3(sum3(at0, at1, s), at22, s * s);
}
function stressOf(F, { alongX, alongY }) {
  const [x, y] = [times(F, alongX), times(F, alongY)];
  return [-(x[0] + y[2]), -(x[2] + y[1])];
}
var cylindrical = (Vx, Vy) => ({ alongX: [Vx, 0, 0], alongY: [0, Vy, 0] });
var zero = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0]
];
function combine(of) {
  const row = (i) => [of(i, 0), of(i, 1), of(i, 2)];
  return [row(0), row(1), row(2)];
}
function product(Qbar, m) {
  const column = (j) => times(Qbar, [entry(m, 0, j), entry(m, 1, j), entry(m, 2, j)]);
  const columns = [column(0), column(1), column(2)];
  return combine((i, j) => columns[j]?.[i] ?? 0);
}
var sum3 = (p2, q, f) => combine((i, j) => entry(p2, i, j) + f * entry(q, i, j));

// packages/core/src/laminate/shear/twist-coupling.ts
var twistMatters = 0.01;
function isTwistCoupled(laminate2) {
  const [[D11 = 0, , D16 = 0], [, D22 = 0, D26 = 0], [, , D66 = 0]] = stiffness(laminate2).D;
  return Math.max(D16 * D16 / D11, D26 * D26 / D22) > twistMatters * D66;
}

// packages/core/src/laminate/shear/transverse-shear.ts
var gauss = [
  [(1 - Math.sqrt(0.6)) / 2, 5 / 18],
  [0.5, 8 / 18],
  [(1 + Math.sqrt(0.6)) / 2, 5 / 18]
];
function transverseShear(laminate2) {
  let [c11, c12, c22, sumX, sumY] = [0, 0, 0, 0, 0];
  const flows = shearFlow(laminate2);
  laminate2.plies.forEach((ply3, k) => {
    const flow = flows[k];
    if (flow === void 0) return;
    const [Gxz, Gxyz, Gyz] = shearStiffnessOf(ply3);
    sumX += Gxz * ply3.thickness;
    sumY += Gyz * ply3.thickness;
    const [[sxx, sxy], [, syy]] = inverse22(Gxz, Gxyz, Gyz);
    for (const [at4, weight] of gauss) {
      const F = flowAt(flow, at4 * ply3.thickness);
      const [[xx, yx], [xy, yy]] = [stressOf(F, cylindrical(1, 0)), stressOf(F, cylindrical(0, 1))];
      const w = weight * ply3.thickness;
      c11 += w * (sxx * xx * xx + 2 * sxy * xx * yx + syy * yx * yx);
      c22 += w * (sxx * xy * xy + 2 * sxy * xy * yy + syy * yy * yy);
      c12 += w * (sxx * xx * xy + sxy * (xx * yy + yx * xy) + syy * yx * yy);
    }
  });
  const H2 = inverse22(c11, c12, c22);
  if (!Number.isFinite(H2[0][0] + H2[0][1] + H2[1][1])) {
    fail({
      code: "not-computable",
      message: "the shear stiffness through the thickness is not a finite number",
      allowed: "shear moduli whose products a number of 64 bits can hold"
    });
  }
  const [kx, ky] = [H2[0][0] / sumX, H2[1][1] / sumY];
  return {
    H: H2,
    kx,
    ky,
    sums: [sumX, sumY],
    notes: uniqueNotes([
      ...laminate2.notes,
      ...laminate2.plies.flatMap((ply3) => plyShear(ply3).notes),
      ...layeredNotes(laminate2, [kx, ky])
    ]),
    sources: uniqueSources(laminate2.sources, ["whitney-1973", "vlachoutsis-1992"])
  };
}
function layeredNotes(laminate2, factors2) {
  if (factors2.every((k) => Math.abs(k - 5 / 6) < 1e-9) || !isTwistCoupled(laminate2)) return [];
  return [
    {
      level: "assumption",
      text: "The shear stiffness H supposes that Mx changes along x alone and My along y alone. Bending and twisting are coupled here, so Mxy changes as well: what shear adds to a deflection may be off by a tenth and more.",
      source: "selvage-2026-derivation"
    }
  ];
}

// packages/core/src/laminate/shear/shear-stress.ts
function shearStressDistribution(laminate2, load, pointsPerPly2 = 3) {
  const gradient = isGradient(load) ? load : cylindrical(load.Vx ?? 0, load.Vy ?? 0);
  demandThree("alongX", gradient.alongX);
  demandThree("alongY", gradient.alongY);
  if (![...gradient.alongX, ...gradient.alongY].every(Number.isFinite)) {
    fail({
      code: "not-a-number",
      message: `a shear force or change of moment is not finite: ${Object.values(load).flat().join(", ")}`,
      allowed: "finite forces per length, N/m"
    });
  }
  if (!(Number.isInteger(pointsPerPly2) && pointsPerPly2 >= 2)) {
    fail({ code: "out-of-range", message: `pointsPerPly is ${pointsPerPly2}`, allowed: "a whole number, 2 or more" });
  }
  const component2 = (i) => (flow, s) => stressOf(flowAt(flow, s), gradient)[i];
  const [xz, yz] = [component2(0), component2(1)];
  const flows = shearFlow(laminate2);
  const points4 = flows.flatMap(
    (flow, k) => Array.from({ length: pointsPerPly2 }, (_, i) => {
      const s = flow.thickness * i / (pointsPerPly2 - 1);
      const [tauXz, tauYz] = stressOf(flowAt(flow, s), gradient);
      return { ply: k + 1, z: flow.lower + s, tauXz, tauYz };
    })
  );
  const peaks = { peakXz: peak(flows, xz), peakYz: peak(flows, yz) };
  if (!points4.every(({ tauXz, tauYz }) => Number.isFinite(tauXz) && Number.isFinite(tauYz))) {
    fail({
      code: "not-computable",
      message: "the shear stress through the thickness is not a finite number",
      allowed: "forces whose stresses a number of 64 bits can hold"
    });
  }
  return {
    points: points4,
    ...peaks,
    notes: isGradient(load) ? laminate2.notes : uniqueNotes([...laminate2.notes, ...twistNotes(laminate2)]),
    sources: uniqueSources(laminate2.sources, ["whitney-1973", "vlachoutsis-1992"])
  };
}
var isGradient = (load) => "alongX" in load || "alongY" in load;
function twistNotes(laminate2) {
  if (!isTwistCoupled(laminate2)) return [];
  return [
    {
      level: "assumption",
      text: "Shear forces do not say how the twisting moment changes along the laminate; it is supposed not to. Bending and twisting are coupled here: in a strip held from twisting the shear stress differs, by a tenth and more."
    }
  ];
}
function peak(flows, component2) {
  let found = { stress: 0, z: 0, ply: 1 };
  flows.forEach((flow, k) => {
    const t = flow.thickness;
    const [first2, middle, last] = [component2(flow, 0), component2(flow, t / 2), component2(flow, t)];
    const vertex = t / 2 * (0.75 * first2 - middle + 0.25 * last) / (0.5 * first2 - middle + 0.5 * last);
    for (const s of [0, t, ...vertex > 0 && vertex < t ? [vertex] : []]) {
      const stress = component2(flow, s);
      if (Math.abs(stress) > Math.abs(found.stress)) found = { stress, z: flow.lower + s, ply: k + 1 };
    }
  });
  return found;
}

// packages/core/src/laminate/plate/plate.ts
var noticeable2 = 1e-6;
function plateStiffness(laminate2, H2) {
  if (H2 !== void 0) demandShearStiffness(H2);
  const { A, B, D } = stiffness(laminate2);
  const reduced = reducedBending(A, B, D);
  const [D11, D12, D16] = [entry(reduced, 0, 0), entry(reduced, 0, 1), entry(reduced, 0, 2)];
  const [D22, D26, D66] = [entry(reduced, 1, 1), entry(reduced, 1, 2), entry(reduced, 2, 2)];
  const shear2 = H2 === void 0 ? transverseShear(laminate2) : { ...laminate2, H: H2 };
  const twist = Math.max(Math.abs(D16) / (D11 ** 3 * D22) ** 0.25, Math.abs(D26) / (D11 * D22 ** 3) ** 0.25);
  const notes4 = [...shear2.notes];
  if (twist > noticeable2) {
    notes4.push({
      level: "warning",
      text: `Bend-twist coupling is left out: D16/(D11\xB3 D22)^\xBC or D26/(D11 D22\xB3)^\xBC is ${twist.toPrecision(3)}. With it the plate buckles earlier and vibrates slower than computed.`
    });
  }
  if (largest(B) > 1e-9 * largest(A) * laminate2.thickness) {
    notes4.push({
      level: "warning",
      text: "The stack is not symmetric: D - B A\u207B\xB9 B stands in for D, an approximation that supposes edges free to move in the plane; the plate also bends before it buckles.",
      source: "jones-1999"
    });
  }
  return { D11, D12, D22, D66, Hx: shear2.H[0][0], Hy: shear2.H[1][1], notes: notes4, sources: shear2.sources };
}
function reducedBending(A, B, D) {
  const a = inverse(A);
  const column = (j) => times(B, times(a, [entry(B, 0, j), entry(B, 1, j), entry(B, 2, j)]));
  const columns = [column(0), column(1), column(2)];
  const row = (i) => columns.map((bab, j) => entry(D, i, j) - (bab[i] ?? 0));
  return [row(0), row(1), row(2)];
}
function demandLengths(lengths) {
  for (const [name, value] of Object.entries(lengths)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({ code: "out-of-range", message: `${name} is ${value} m`, allowed: "a finite length above 0" });
    }
  }
}

// packages/core/src/laminate/plate/thin-film.ts
var thin = { stretching: 0.2, bending: 0.1 };
function thinFilmNotes(film, base2) {
  const assumption2 = {
    level: "assumption",
    text: "Thin film: the plies that buckle are thin beside the rest of the laminate, which stays flat and keeps its strain.",
    source: "chai-babcock-knauss-1981"
  };
  if (base2 === void 0) return [assumption2];
  const under = stiffness(base2);
  const stretching = Math.max(...[0, 1].map((i) => entry(film.A, i, i) / (entry(film.A, i, i) + entry(under.A, i, i))));
  const [filmD, underD] = [bendingOf(film), bendingOf(under)];
  const bending = Math.max(...[0, 1].map((i) => entry(filmD, i, i) / entry(underD, i, i)));
  const size4 = `up to ${percent2(stretching)} of the stiffness in the plane, and up to ${percent2(bending)} of the bending stiffness of the rest`;
  if (stretching <= thin.stretching && bending <= thin.bending)
    return [{ ...assumption2, text: `${assumption2.text} Here they have ${size4}.` }];
  return [
    assumption2,
    {
      level: "warning",
      text: `The plies that buckle are no thin film: they have ${size4}. The rest gives way with them, so they may buckle and grow earlier than computed.`
    }
  ];
}
var isUnsymmetric = ({ A, B, thickness }) => largest(B) > 1e-9 * largest(A) * thickness;
function unsymmetricNotes(film) {
  if (!isUnsymmetric(film)) return [];
  return [
    {
      level: "warning",
      text: "The plies that buckle are not symmetric among themselves: D - B A\u207B\xB9 B stands in for D, which puts buckling too early rather than too late."
    }
  ];
}
var bendingOf = ({ A, B, D }) => reducedBending(A, B, D);
var percent2 = (share2) => `${(100 * share2).toPrecision(2)} %`;

// packages/core/src/laminate/plate/blister-ellipse.ts
var slender = 3;
var deep = 5;
var contact = 0.02;
function ellipseBlister(sublaminate, blister) {
  const { a, b, strain: strain2, toughness: toughness3 } = blister;
  demandLengths({ a, b });
  if (!strain2.every(Number.isFinite)) {
    fail({ code: "out-of-range", message: `the strain is ${strain2.join(", ")}`, allowed: "three finite strains" });
  }
  if (toughness3 !== void 0 && !(toughness3 > 0 && Number.isFinite(toughness3))) {
    fail({ code: "out-of-range", message: `the toughness is ${toughness3} J/m\xB2`, allowed: "a finite value above 0" });
  }
  const film = stiffness(sublaminate);
  const [N, D] = [times(film.A, strain2), reducedBending(film.A, film.B, film.D)];
  const buckling = buckleEllipse(D, [a, b], N);
  if (buckling === void 0) {
    return fail({
      code: "out-of-range",
      message: `the strain ${strain2.join(", ")} compresses the plies in no direction`,
      allowed: "a strain under which they are compressed or sheared"
    });
  }
  const { multiplier } = buckling;
  const scaled3 = ([x, y, xy]) => [multiplier * x, multiplier * y, multiplier * xy];
  const buckled = multiplier < 1;
  const release = buckled || toughness3 !== void 0 ? ellipseGrowth({ A: film.A, D }, [a, b], strain2, buckling) : void 0;
  const now = buckled ? release?.(1) : void 0;
  const grown = toughness3 === void 0 || release === void 0 ? void 0 : growthMultiplier(release, multiplier, toughness3);
  const states = [
    ...now === void 0 ? [] : [{ where: "Under the given strain", multiplier: 1, release: now }],
    ...grown === void 0 ? [] : [{ where: "At the strain of growth", ...grown }]
  ];
  return {
    multiplier,
    strain: scaled3(strain2),
    N: scaled3(N),
    G: now?.G ?? [0, 0],
    ...grown === void 0 ? {} : { growthMultiplier: grown.multiplier },
    notes: uniqueNotes([
      ...sublaminate.notes,
      clamped,
      ...thinFilmNotes(film, blister.base),
      ...unsymmetricNotes(film),
      ...slenderNotes(Math.max(a / b, b / a)),
      ...release === void 0 ? [] : [mean],
      ...contactNotes2(buckling.parity === 1, states),
      ...deepNotes(multiplier, states)
    ]),
    sources: uniqueSources(sublaminate.sources, [
      "timoshenko-gere-1961",
      "chai-babcock-knauss-1981",
      ...release === void 0 ? [] : ["hutchinson-suo-1992"],
      "selvage-2026-derivation"
    ])
  };
}
var clamped = {
  level: "assumption",
  text: "The plies that buckle are clamped along the edge of the delamination and strained as the rest of the laminate."
};
var mean = {
  level: "assumption",
  text: "G is the mean over an edge that grows along x or along y. Where the edge is driven unevenly its worst point starts earlier. Into which modes G splits is not told."
};
function slenderNotes(ratio) {
  if (ratio <= slender) return [];
  return [
    {
      level: "warning",
      text: `The axes of the ellipse stand as ${ratio.toPrecision(2)} to 1; beyond ${slender} the computed buckling load may be too high: use the long strip.`
    }
  ];
}
function contactNotes2(odd, states) {
  const touching = states.filter(
    ({ release }) => release !== void 0 && release.opposite > contact * release.deflection
  );
  if (!odd && touching.length === 0) return [];
  return [
    {
      level: "warning",
      text: `${odd ? "From buckling on" : touching[0]?.where ?? ""} the plies bend to both sides and press on the laminate under them, which is not counted: ${odd ? "they buckle later than computed, and G is rough" : "G is rough there"}.`
    }
  ];
}
function deepNotes(critical, states) {
  const [first2] = states.filter(({ multiplier }) => multiplier > deep * critical);
  if (first2 === void 0) return [];
  return [
    {
      level: "warning",
      text: `${first2.where} the blister is at ${(first2.multiplier / critical).toPrecision(2)} times its buckling strain. Beyond ${deep} times the folds of the plies are finer than the solution: G is rough there.`
    }
  ];
}

// packages/core/src/laminate/plate/blister-strip.ts
var stubby = 20;
function stripBlister(sublaminate, blister) {
  const { length: length2, strain: strain2 = 0, toughness: toughness3 } = blister;
  demandLengths({ length: length2 });
  if (!Number.isFinite(strain2)) {
    fail({ code: "out-of-range", message: `the strain is ${strain2}`, allowed: "a finite strain" });
  }
  if (toughness3 !== void 0 && !(toughness3 > 0 && Number.isFinite(toughness3))) {
    fail({ code: "out-of-range", message: `the toughness is ${toughness3} J/m\xB2`, allowed: "a finite value above 0" });
  }
  const film = stiffness(sublaminate);
  const A11 = entry(film.A, 0, 0);
  const N = 4 * Math.PI ** 2 * stripStiffness(film).D11 / (length2 * length2);
  const critical = N / A11;
  const e0 = Math.max(-strain2, critical);
  return {
    criticalStrain: -critical,
    criticalN: -N,
    G: A11 * (e0 - critical) * (e0 + 3 * critical) / 2,
    ...toughness3 === void 0 ? {} : { growthStrain: critical - Math.sqrt(4 * critical * critical + 2 * toughness3 / A11) },
    notes: uniqueNotes([
      ...sublaminate.notes,
      ...thinFilmNotes(film, blister.base),
      ...isUnsymmetric(film) ? [unsymmetric] : [],
      ...shortNotes(length2, sublaminate.thickness)
    ]),
    sources: uniqueSources(sublaminate.sources, ["chai-babcock-knauss-1981", "selvage-2026-derivation"])
  };
}
var unsymmetric = {
  level: "assumption",
  text: "The plies that buckle are not symmetric among themselves: bending stretches and shears them, which a long strip is free to do between its two edges. They buckle later where its ends are near."
};
function shortNotes(length2, thickness) {
  if (length2 >= stubby * thickness) return [];
  return [
    {
      level: "warning",
      text: `The blister is ${(length2 / thickness).toPrecision(2)} thicknesses long; below ${stubby} shear through the thickness lowers its buckling load.`
    }
  ];
}

// packages/core/src/laminate/plate/mode-stiffness.ts
var waveNumbers = (a, b, m, n) => [
  m * Math.PI / a,
  n * Math.PI / b
];
function thinModeStiffness({ D11, D12, D22, D66 }, alpha, beta) {
  const [x, y] = [alpha * alpha, beta * beta];
  return D11 * x * x + 2 * (D12 + 2 * D66) * x * y + D22 * y * y;
}
function shearModeStiffness(p2, alpha, beta, inertia = 0) {
  const [x, y] = [alpha * alpha, beta * beta];
  const L11 = p2.D11 * x + p2.D66 * y - inertia;
  const L22 = p2.D66 * x + p2.D22 * y - inertia;
  const L12 = (p2.D12 + p2.D66) * alpha * beta;
  const [h1, h2] = [p2.Hx * alpha, p2.Hy * beta];
  const [m11, m22] = [L11 + p2.Hx, L22 + p2.Hy];
  const det = m11 * m22 - L12 * L12;
  const r1 = (m22 * h1 - L12 * h2) / det;
  const r2 = (m11 * h2 - L12 * h1) / det;
  return alpha * (L11 * r1 + L12 * r2) + beta * (L12 * r1 + L22 * r2);
}

// packages/core/src/laminate/plate/plate-buckling.ts
function plateBuckling(laminate2, plate, load) {
  demandLengths({ a: plate.a, b: plate.b });
  const { Nx, Ny = 0 } = load;
  if (!(Number.isFinite(Nx) && Number.isFinite(Ny) && Math.min(Nx, Ny) < 0)) {
    fail({
      code: "out-of-range",
      message: `Nx is ${Nx} N/m and Ny is ${Ny} N/m`,
      allowed: "finite forces of which one at least is compression, below 0"
    });
  }
  const p2 = plateStiffness(laminate2, load.H);
  const thin2 = lowest(p2, plate, [Nx, Ny], thinModeStiffness);
  const shear2 = lowest(p2, plate, [Nx, Ny], shearModeStiffness);
  const crimping = Math.min(...[Nx < 0 ? p2.Hx / -Nx : [], Ny < 0 ? p2.Hy / -Ny : []].flat());
  const withShear = crimping < shear2.multiplier ? loadAt(crimping, [Nx, Ny]) : shear2;
  const share2 = 1 - withShear.multiplier / thin2.multiplier;
  const soft = share2 > 0.05 ? [
    {
      level: "warning",
      text: `Shear through the thickness lowers the buckling load by ${(100 * share2).toFixed(0)} %; the value with shear is the one to use.`
    }
  ] : [];
  return {
    thin: thin2,
    withShear,
    notes: uniqueNotes([...p2.notes, ...soft]),
    sources: uniqueSources(p2.sources, ["jones-1999", "timoshenko-gere-1961", "reddy-2004"])
  };
}
function lowest(p2, { a, b }, [Nx, Ny], stiffnessOf) {
  const lastM = mostWaves(a / b, p2.D11, p2, -Nx, Ny);
  const lastN = mostWaves(b / a, p2.D22, p2, -Ny, Nx);
  let found = { multiplier: Number.POSITIVE_INFINITY, Nx, Ny };
  for (let m = 1; m <= lastM; m++) {
    for (let n = 1; n <= lastN; n++) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const compression = -Nx * alpha * alpha - Ny * beta * beta;
      const multiplier = stiffnessOf(p2, alpha, beta) / compression;
      if (compression > 0 && multiplier < found.multiplier) found = { ...loadAt(multiplier, [Nx, Ny]), m, n };
    }
  }
  return found;
}
function mostWaves(aspect, along2, p2, compression, tension) {
  if (!(compression > 0)) return 4;
  const tau = Math.max(0, tension / compression);
  const across2 = p2.D11 * p2.D22 / along2;
  const x = tau + Math.sqrt(tau * tau + (2 * (p2.D12 + 2 * p2.D66) * tau + across2) / along2);
  return 3 + Math.ceil(2 * aspect * Math.sqrt(x));
}
var loadAt = (multiplier, [Nx, Ny]) => ({
  multiplier,
  Nx: multiplier * Nx,
  Ny: multiplier * Ny
});

// packages/core/src/laminate/plate/plate-deflection.ts
var large = 0.5;
function largeNotes(thicknesses) {
  if (thicknesses <= large) return [];
  return [
    {
      level: "warning",
      text: `The plate deflects by ${Number(thicknesses.toPrecision(2))} times its thickness. Above ${large} a plate whose edges cannot draw in stretches too and deflects less than computed (common practice, no source).`
    }
  ];
}
var halfWaves = 199;
function plateDeflection(laminate2, { a, b }, load) {
  demandLengths({ a, b });
  if (!Number.isFinite(load.pressure)) {
    fail({ code: "out-of-range", message: `the pressure is ${load.pressure} Pa`, allowed: "a finite pressure" });
  }
  const shape = choice("shape", load.shape, ["uniform", "sine"]);
  const p2 = plateStiffness(laminate2, load.H);
  const last = shape === "sine" ? 1 : halfWaves;
  let [thin2, withShear] = [0, 0];
  for (let m = last; m >= 1; m -= 2) {
    for (let n = last; n >= 1; n -= 2) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const sign2 = (m + n) % 4 === 2 ? 1 : -1;
      const q = shape === "sine" ? load.pressure : sign2 * 16 * load.pressure / (Math.PI ** 2 * m * n);
      thin2 += q / thinModeStiffness(p2, alpha, beta);
      withShear += q / shearModeStiffness(p2, alpha, beta);
    }
  }
  return {
    thin: thin2,
    withShear,
    notes: [...p2.notes, ...largeNotes(Math.abs(withShear) / laminate2.thickness)],
    sources: uniqueSources(p2.sources, ["jones-1999", "reddy-2004"])
  };
}

// packages/core/src/laminate/plate/plate-vibration.ts
var mostModes = 25;
function plateVibration(laminate2, plate, options = {}) {
  const { a, b } = plate;
  demandLengths({ a, b });
  const { modes: wanted = 1, rotaryInertia = true } = options;
  if (!(Number.isInteger(wanted) && wanted >= 1 && wanted <= mostModes)) {
    fail({ code: "out-of-range", message: `modes is ${wanted}`, allowed: `a whole number from 1 to ${mostModes}` });
  }
  const I0 = massOf(laminate2, options.arealMass);
  const I2 = rotaryInertia ? rotaryInertiaOf(laminate2, I0) : 0;
  const p2 = plateStiffness(laminate2, options.H);
  const found = [];
  for (let m = 1; m <= wanted; m++) {
    for (let n = 1; m * n <= wanted; n++) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const thin2 = thinModeStiffness(p2, alpha, beta) / (I0 + I2 * (alpha * alpha + beta * beta));
      found.push({ m, n, thin: hertz(thin2), withShear: hertz(squareWithShear(p2, [alpha, beta], I0, I2)) });
    }
  }
  const modes = found.toSorted((one, other) => one.withShear - other.withShear).slice(0, wanted);
  return {
    modes,
    notes: uniqueNotes([...p2.notes, inAir]),
    sources: uniqueSources(p2.sources, ["jones-1999", "reddy-2004"])
  };
}
var inAir = {
  level: "assumption",
  text: "Frequencies are those of the plate alone; water that moves with it lowers them much."
};
var hertz = (square2) => Math.sqrt(square2) / (2 * Math.PI);
function squareWithShear(p2, [alpha, beta], I0, I2) {
  let upper = shearModeStiffness(p2, alpha, beta) / I0;
  if (I2 === 0) return upper;
  let lower = 0;
  for (let halving = 0; halving < 60; halving++) {
    const s = (lower + upper) / 2;
    const K = shearModeStiffness(p2, alpha, beta, I2 * s);
    if (K > I0 * s) lower = s;
    else upper = s;
  }
  return (lower + upper) / 2;
}
function massOf(laminate2, given) {
  const mass = given ?? arealMass2(laminate2).total;
  if (mass === void 0) {
    return fail({
      code: "missing-key",
      message: "a ply of the laminate has no density, so its natural frequency cannot be computed",
      allowed: "a density for every ply, or the areal mass"
    });
  }
  if (!(mass > 0 && Number.isFinite(mass))) {
    fail({ code: "out-of-range", message: `the areal mass is ${mass} kg/m\xB2`, allowed: "a finite mass above 0" });
  }
  return mass;
}
function rotaryInertiaOf({ plies: plies2, thickness }, I0) {
  let lower = -thickness / 2;
  let sum5 = 0;
  for (const { density, thickness: t } of plies2) {
    const z15 = lower + t / 2;
    sum5 += (density ?? Number.NaN) * (t * z15 * z15 + t * t * t / 12);
    lower += t;
  }
  return Number.isNaN(sum5) ? I0 * thickness * thickness / 12 : sum5;
}

// packages/core/src/laminate/sandwich/allen.ts
var thinFaceWeakCoreLimit = 100;
function allenStiffness({ tool, core: core2, bag }, faces2, { Ec, Gc }) {
  const c = core2.thickness;
  const d = c + (tool.thickness + bag.thickness) / 2 + faces2[1].neutral - faces2[0].neutral;
  const [k1, k2] = [faces2[0].membrane * tool.thickness, faces2[1].membrane * bag.thickness];
  const apart2 = k1 * k2 * d * d / (k1 + k2);
  const local = (faces2[0].bending * tool.thickness ** 3 + faces2[1].bending * bag.thickness ** 3) / 12;
  const inCore = Ec * c ** 3 / 12;
  return { d, apart: apart2, local, core: inCore, D: apart2 + local + inCore, S: Gc * d * d / c };
}
function allenCriteria({ tool, core: core2, bag }, faces2, Ec) {
  const c = core2.thickness;
  const d = c + (tool.thickness + bag.thickness) / 2;
  const softer = Math.min(faces2[0].membrane * tool.thickness, faces2[1].membrane * bag.thickness);
  return {
    thinFaces: 3 * (d / Math.max(tool.thickness, bag.thickness)) ** 2,
    weakCore: 6 * softer * d * d / (Ec * c ** 3)
  };
}
var handBookTolerance = 0.01;

// packages/core/src/laminate/sandwich/core-shear.ts
var points2 = 51;
function coreShear(laminate2, forces, d, strength) {
  const { points: all } = shearStressDistribution(laminate2, forces, points2);
  const inCore = all.filter(({ ply: ply3 }) => laminate2.plies[ply3 - 1]?.core === true);
  const stress = Math.max(...inCore.map(({ tauXz, tauYz }) => Math.hypot(tauXz, tauYz)));
  return {
    stress,
    nominal: Math.hypot((forces.Vx ?? 0) / d[0], (forces.Vy ?? 0) / d[1]),
    ...strength === void 0 || stress === 0 ? {} : { ratio: strength / stress }
  };
}

// packages/core/src/laminate/sandwich/face.ts
function faceStiffness(face) {
  const whole2 = stiffness(face);
  const { inPlaneRestrained, flexural } = engineeringConstants(whole2);
  const compliance = inverse(whole2.A);
  const moment = (N) => times(whole2.B, times(compliance, N));
  return {
    x: { membrane: inPlaneRestrained.Ex, bending: flexural.Ex, neutral: moment([1, 0, 0])[0] },
    y: { membrane: inPlaneRestrained.Ey, bending: flexural.Ey, neutral: moment([0, 1, 0])[1] }
  };
}

// packages/core/src/laminate/sandwich/face-stress.ts
function meanStress(laminate2, load, first2, end2) {
  const { plies: plies2 } = respond(laminate2, load);
  let [x, y, thickness] = [0, 0, 0];
  plies2.slice(first2, end2).forEach(({ middle }, k) => {
    const t = laminate2.plies[first2 + k]?.thickness ?? 0;
    x += middle.stress[0] * t;
    y += middle.stress[1] * t;
    thickness += t;
  });
  return [x / thickness, y / thickness];
}

// packages/core/src/laminate/sandwich/find-core.ts
function findCore({ plies: plies2 }) {
  const first2 = plies2.findIndex((ply3) => ply3.core === true);
  if (first2 < 0) return "no ply is a core";
  const last = plies2.findLastIndex((ply3) => ply3.core === true);
  if (plies2.slice(first2, last).some((ply3) => ply3.core !== true)) return "there is more than one core";
  if (first2 === 0) return "the core has no face on the tool side";
  if (last === plies2.length - 1) return "the core has no face on the bag side";
  return {
    tool: laminate(plies2.slice(0, first2)),
    core: laminate(plies2.slice(first2, last + 1)),
    bag: laminate(plies2.slice(last + 1))
  };
}

// packages/core/src/laminate/sandwich/sandwich-notes.ts
function sandwichNotes(checks2) {
  const { tool, bag } = checks2;
  const notes4 = [];
  if (checks2.core.modulusAssumed) {
    notes4.push({
      level: "assumption",
      text: "The modulus of the core through its thickness is taken as that in its plane; a core with a grain or cells needs its own, E3."
    });
  }
  if ([tool.x, tool.y, bag.x, bag.y].some(({ faceStress: faceStress2 }) => faceStress2 !== void 0 && faceStress2 < 0)) {
    notes4.push({
      level: "assumption",
      text: "Wrinkling is judged along x and along y, each alone: compression along both at once and shear in the plane of a face are not covered."
    });
  }
  for (const axis of ["x", "y"]) notes4.push(...criteriaNotes(checks2, axis), ...depthNotes(checks2, axis));
  if (checks2.coreShear !== void 0 && checks2.core.shearStrength === void 0) {
    notes4.push({
      level: "warning",
      text: "The core has no shear strength, so its shear stress is not judged."
    });
  }
  return notes4;
}
function criteriaNotes(checks2, axis) {
  const { criteria, difference } = checks2[axis];
  const { thinFaces, weakCore } = criteria;
  const notes4 = [];
  if (thinFaces < thinFaceWeakCoreLimit) {
    notes4.push({
      level: "warning",
      text: `The faces are not thin: 3 (d/t)\xB2 is ${thinFaces.toPrecision(3)}, under ${thinFaceWeakCoreLimit}. Formulas for thin faces may be off by more than a per cent; D and H of the laminate are not.`,
      source: "allen-1969"
    });
  }
  if (weakCore < thinFaceWeakCoreLimit) {
    notes4.push({
      level: "warning",
      text: `The core is not weak along ${axis}: 6 Ef t d\xB2/(Ec c\xB3) is ${weakCore.toPrecision(3)}, under ${thinFaceWeakCoreLimit}. It carries bending, and shear stress in it is not even.`,
      source: "allen-1969"
    });
  }
  if (Math.abs(difference) > handBookTolerance) {
    notes4.push({
      level: "warning",
      text: `The hand-book D along ${axis} is ${(100 * Math.abs(difference)).toPrecision(2)} % ${difference > 0 ? "above" : "below"} the bending stiffness of the laminate, 1/d: faces and core hold each other in other directions, which the formula does not know. Use that of the laminate.`
    });
  }
  return notes4;
}
function depthNotes({ core: core2, tool, bag }, axis) {
  const depth = Math.max(tool[axis].depth, bag[axis].depth);
  if (depth <= core2.thickness / 2) return [];
  const share2 = (100 * depth / core2.thickness).toPrecision(3);
  return [
    {
      level: "warning",
      text: `Wrinkles along ${axis} would reach ${share2} % of the core's thickness into it, more than half: the waves of both faces meet, and the computed wrinkling stress is that of a deeper core.`,
      source: "hoff-mautner-1945"
    }
  ];
}

// packages/core/src/laminate/sandwich/wrinkling.ts
var wrinklingCoefficientInTheory = 3 / Math.cbrt(36);
var wrinklingCoefficientInDesign = 0.5;
function wrinklingStress(moduli, coefficient = wrinklingCoefficientInDesign) {
  demandPositive({ ...moduli, coefficient });
  return coefficient * Math.cbrt(moduli.Ef * moduli.Ec * moduli.Gc);
}
function wrinklingDepth(moduli, thickness) {
  demandPositive({ ...moduli, thickness });
  return thickness * Math.cbrt(0.75 * moduli.Ef * moduli.Ec / moduli.Gc ** 2);
}
function deepCoreWrinklingStress(Ef, Ec, nu) {
  demandPositive({ Ef, Ec });
  if (!(nu > -1 && nu <= 0.5)) {
    fail({ code: "out-of-range", message: `nu is ${nu}`, allowed: "more than -1, at most 0.5" });
  }
  const B1 = 3 / Math.cbrt(12 * ((3 - nu) * (1 + nu)) ** 2);
  return B1 * Math.cbrt(Ef * Ec * Ec);
}
function demandPositive(values) {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({ code: "out-of-range", message: `${name} is ${value}`, allowed: "a finite number above 0" });
    }
  }
}

// packages/core/src/laminate/sandwich/sandwich-checks.ts
function sandwichChecks(laminate2, options = {}) {
  const parts2 = findCore(laminate2);
  if (typeof parts2 === "string") {
    return { isSandwich: false, reason: parts2, notes: laminate2.notes, sources: laminate2.sources };
  }
  const { coefficient = wrinklingCoefficientInDesign, load, shear: shear2, faceStress: faceStress2 } = options;
  demandStress("tool", faceStress2?.tool);
  demandStress("bag", faceStress2?.bag);
  const core2 = coreOf(parts2.core);
  const [tool, bag] = [faceStiffness(parts2.tool), faceStiffness(parts2.bag)];
  const inCore = faceStiffness(parts2.core);
  const { H: H2, notes: notes4, sources } = transverseShear(laminate2);
  const count = laminate2.plies.length;
  const end2 = parts2.tool.plies.length;
  const first2 = count - parts2.bag.plies.length;
  const stressOf2 = (given, from, to) => given ?? (load === void 0 ? void 0 : meanStress(laminate2, load, from, to));
  const d = core2.thickness + (parts2.tool.thickness + parts2.bag.thickness) / 2;
  const face = (thickness, moduli, stress) => ({
    thickness,
    x: wrinklingOf(moduli.x.bending, core2, core2.Gx, nuOf(parts2.core), coefficient, thickness, stress?.[0]),
    y: wrinklingOf(moduli.y.bending, core2, core2.Gy, nuOf(parts2.core), coefficient, thickness, stress?.[1])
  });
  const flexibility = stiffness(laminate2).d;
  const along2 = (axis, i, Gc) => {
    const allen = allenStiffness(parts2, [tool[axis], bag[axis]], { Ec: inCore[axis].membrane, Gc });
    return {
      allen,
      criteria: allenCriteria(parts2, [tool[axis], bag[axis]], inCore[axis].membrane),
      difference: allen.D * entry(flexibility, i, i) - 1,
      H: H2[i][i] ?? 0
    };
  };
  const [x, y] = [along2("x", 0, core2.Gx), along2("y", 1, core2.Gy)];
  const checks2 = {
    isSandwich: true,
    core: core2,
    d,
    tool: face(parts2.tool.thickness, tool, stressOf2(faceStress2?.tool, 0, end2)),
    bag: face(parts2.bag.thickness, bag, stressOf2(faceStress2?.bag, first2, count)),
    x,
    y,
    ...shear2 === void 0 ? {} : { coreShear: coreShear(laminate2, shear2, [x.allen.d, y.allen.d], core2.shearStrength) }
  };
  return {
    ...checks2,
    notes: uniqueNotes([...notes4, ...sandwichNotes(checks2)]),
    sources: uniqueSources(sources, ["hoff-mautner-1945", "allen-1969"])
  };
}
function demandStress(face, stress) {
  if (stress === void 0 || stress.length === 2 && stress.every(Number.isFinite)) return;
  fail({
    code: "not-a-number",
    message: `the stress of the ${face} face is ${stress.join(", ")} Pa`,
    allowed: "two finite numbers, along x and y"
  });
}
var throughThickness = ({ E1, E2, E3 }) => E3 ?? Math.min(E1, E2);
function coreOf({ plies: plies2, thickness }) {
  const inSeries = (of) => thickness / plies2.reduce((sum5, ply3) => sum5 + ply3.thickness / of(ply3), 0);
  const strengths2 = plies2.flatMap((ply3) => ply3.shearStrength ?? ply3.strengths?.S ?? []);
  return {
    thickness,
    E: Math.min(...plies2.map(throughThickness)),
    modulusAssumed: plies2.some(({ E3 }) => E3 === void 0),
    Gx: inSeries((ply3) => shearStiffnessOf(ply3)[0]),
    Gy: inSeries((ply3) => shearStiffnessOf(ply3)[2]),
    ...strengths2.length < plies2.length ? {} : { shearStrength: Math.min(...strengths2) }
  };
}
var nuOf = ({ plies: plies2 }) => Math.max(...plies2.map(({ nu12 }) => Math.min(nu12, 0.5)));
function wrinklingOf(Ef, core2, Gc, nu, coefficient, thickness, faceStress2) {
  const moduli = { Ef, Ec: core2.E, Gc };
  const stress = wrinklingStress(moduli, coefficient);
  return {
    faceModulus: Ef,
    stress,
    inTheory: wrinklingStress(moduli, wrinklingCoefficientInTheory),
    deepCore: deepCoreWrinklingStress(Ef, core2.E, nu),
    depth: wrinklingDepth(moduli, thickness),
    ...faceStress2 === void 0 ? {} : { faceStress: faceStress2 },
    ...faceStress2 === void 0 || faceStress2 >= 0 ? {} : { ratio: stress / -faceStress2 }
  };
}

// packages/core/src/laminate/strength/lay.ts
function layOf(ply3) {
  if (isIsotropic(ply3)) return "mat";
  return isCloth(ply3) ? "cloth" : "unidirectional";
}

// packages/core/src/laminate/strength/discount.ts
var discounts = ["matrix", "total"];
function discounted(ply3, damage, factor) {
  const { E1, E2, G12, nu12 } = ply3;
  switch (damage) {
    case "whole":
      return ply3;
    case "cracked":
      return {
        ...ply3,
        E2: layOf(ply3) === "cloth" ? E2 : E2 * factor,
        G12: G12 * factor,
        nu12: nu12 * factor
      };
    case "failed":
      return { ...ply3, E1: E1 * factor, E2: E2 * factor, G12: G12 * factor };
  }
}
var damaged = (laminate2, damage, factor) => ({
  ...laminate2,
  plies: laminate2.plies.map((ply3, k) => discounted(ply3, damage[k] ?? "whole", factor))
});

// packages/core/src/laminate/strength/cloth-naming.ts
var unlike = /* @__PURE__ */ new Set(["hashin", "tsaiHill"]);
var dependsOnNaming = ({ plies: plies2 }, criterion) => unlike.has(criterion) && plies2.some((ply3) => ply3.strengths !== void 0 && layOf(ply3) === "cloth");
var renamed = (laminate2) => ({
  ...laminate2,
  plies: laminate2.plies.map((ply3) => layOf(ply3) === "cloth" ? exchanged(ply3) : ply3)
});
function exchanged(ply3) {
  const { angle: angle2, E1, E2, nu12, strengths: strengths2, expansion: expansion2, moistureExpansion: moistureExpansion3 } = ply3;
  return {
    ...ply3,
    angle: angle2 + 90,
    E1: E2,
    E2: E1,
    nu12: nu12 * E2 / E1,
    ...strengths2 && {
      strengths: { Xt: strengths2.Yt, Xc: strengths2.Yc, Yt: strengths2.Xt, Yc: strengths2.Xc, S: strengths2.S }
    },
    ...expansion2 && { expansion: { alpha1: expansion2.alpha2, alpha2: expansion2.alpha1 } },
    ...moistureExpansion3 && {
      moistureExpansion: { beta1: moistureExpansion3.beta2, beta2: moistureExpansion3.beta1 }
    }
  };
}
function inRenamedAxes({ plies: plies2 }, stress) {
  const turned = ([s1, s2, s12]) => [s2, s1, 0 - s12];
  return stress.map((one, k) => {
    const ply3 = plies2[k];
    if (ply3 === void 0 || layOf(ply3) !== "cloth") return one;
    return { top: turned(one.top), bottom: turned(one.bottom) };
  });
}
var worthTelling = 0.01;
function namingNotes(criterion, what, ratio, other) {
  if (ratio === void 0 || other === void 0 || Math.abs(other - ratio) <= worthTelling * ratio) return [];
  const name = criterion === "hashin" ? "Hashin" : "Tsai-Hill";
  const shown3 = (value) => String(Number(value.toPrecision(4)));
  return [
    {
      level: "warning",
      text: `${name} is not alike along warp and weft of a cloth: ${what}-ply failure at ${shown3(ratio)} times the load would be at ${shown3(other)} times with the names of warp and weft exchanged.`
    }
  ];
}

// packages/core/src/laminate/strength/mat-ratio.ts
var noStress = [0, 0, 0];
var step2 = 5;
var narrow = 1e-4;
var golden = (Math.sqrt(5) - 1) / 2;
var hopeless = 1.5;
function weakestAxes(criterion, [s1, s2, s12], [r1, r2, r12], c, limit5) {
  const ratioOf = ratioFunctions[criterion];
  const [mean3, half] = [(s1 + s2) / 2, (s1 - s2) / 2];
  const d = Math.hypot(half, s12);
  const [cos, sin] = d === 0 ? [1, 0] : [half / d, s12 / d];
  const [restMean, restHalf] = [(r1 + r2) / 2, (r1 - r2) / 2];
  const [q, t] = [restHalf * cos + r12 * sin, r12 * cos - restHalf * sin];
  const at4 = (theta) => {
    const [co, si] = [cosDegrees(2 * theta), sinDegrees(2 * theta)];
    const [a, b, e, f] = [d * co, -d * si, q * co + t * si, t * co - q * si];
    const stress = [mean3 + a, mean3 - a, b];
    const residual3 = [restMean + e, restMean - e, f];
    return { ratio: ratioOf(...stress, ...residual3, c, Number.POSITIVE_INFINITY), stress, residual: residual3 };
  };
  const even3 = q === 0 && t === 0;
  if (!even3) {
    const alone = weakestAxes(criterion, [r1, r2, r12], noStress, c, Number.POSITIVE_INFINITY);
    if (alone.ratio <= 1) return { ratio: 0, stress: noStress, residual: alone.stress };
  }
  const tried = Array.from({ length: (even3 ? 90 : 180) / step2 + 1 }, (_, i) => at4(i * step2));
  let weakest2 = tried.reduce((least2, one) => one.ratio < least2.ratio ? one : least2);
  const worth = hopeless * Math.min(weakest2.ratio, limit5);
  for (const [i, { ratio }] of tried.entries()) {
    const [before2, after] = [tried[i - 1]?.ratio ?? ratio, tried[i + 1]?.ratio ?? ratio];
    if (!(ratio <= before2 && ratio <= after && ratio <= worth && ratio > 0)) continue;
    const found = closeIn(at4, (i - 1) * step2, (i + 1) * step2);
    if (found.ratio < weakest2.ratio) weakest2 = found;
  }
  return weakest2;
}
function closeIn(at4, from, to) {
  let [low, high] = [from, to];
  let [left4, right] = [at4(high - golden * (high - low)), at4(low + golden * (high - low))];
  while (high - low > narrow) {
    if (left4.ratio <= right.ratio) {
      high = low + golden * (high - low);
      right = left4;
      left4 = at4(high - golden * (high - low));
    } else {
      low = high - golden * (high - low);
      left4 = right;
      right = at4(low + golden * (high - low));
    }
  }
  return left4.ratio <= right.ratio ? left4 : right;
}

// packages/core/src/laminate/strength/mode.ts
var words = {
  fibreTension: "tension along the fibre",
  fibreCompression: "compression along the fibre",
  transverseTension: "tension across the fibre",
  transverseCompression: "compression across the fibre",
  shear: "shear along the fibre",
  matrixTension: "matrix in tension",
  matrixCompression: "matrix in compression",
  puckA: "between fibres, mode A (tension, crack upright)",
  puckB: "between fibres, mode B (shear under compression, crack upright)",
  puckC: "between fibres, mode C (compression, crack oblique)",
  warpTension: "tension along the warp",
  warpCompression: "compression along the warp",
  weftTension: "tension along the weft",
  weftCompression: "compression along the weft",
  clothShear: "shear between warp and weft",
  matTension: "tension of the mat",
  matCompression: "compression of the mat",
  matShear: "shear of the mat",
  none: "none"
};
var noMode = { modeKey: "none", mode: words.none };
var matrixModes = /* @__PURE__ */ new Set([
  "transverseTension",
  "transverseCompression",
  "shear",
  "matrixTension",
  "matrixCompression",
  "puckA",
  "puckB",
  "puckC",
  "clothShear"
]);
var breaksFibres = (key) => !matrixModes.has(key);
var clearly = 1 + 1e-9;
function modeAt(criterion, stress, c, lay = "unidirectional") {
  const [s1, s2, s12] = stress;
  if (lay !== "unidirectional") {
    const modeKey = (lay === "cloth" ? clothMode : matMode)(criterion, s1, s2, s12, c);
    return combines(criterion) ? { modeKey, mode: `combined stress, mostly ${words[modeKey]}` } : named(modeKey);
  }
  switch (criterion) {
    case "maxStress":
      return named(largest3(s1, s2, s12, c));
    case "maxStrain":
      return named(largest3(s1 - c.nu12 * s2, s2 - c.nu21 * s1, s12, c));
    case "hashin":
      return named(hashinMode(s1, s2, s12, c));
    case "puck":
      return puckMode(s1, s2, s12, c);
    case "tsaiHill":
    case "tsaiWu": {
      const modeKey = largest3(s1, s2, s12, c);
      return { modeKey, mode: `combined stress, mostly ${words[modeKey]}` };
    }
  }
}
var combines = (criterion) => criterion === "tsaiHill" || criterion === "tsaiWu";
var named = (modeKey) => ({ modeKey, mode: words[modeKey] });
function shares2(s1, s2, s12, { Xt, Xc, Yt, Yc, S }) {
  return {
    along: s1 >= 0 ? s1 / Xt : -s1 / Xc,
    across: s2 >= 0 ? s2 / Yt : -s2 / Yc,
    shear: Math.abs(s12) / S
  };
}
function largest3(s1, s2, s12, c) {
  const { along: along2, across: across2, shear: shear2 } = shares2(s1, s2, s12, c);
  if (along2 > clearly * Math.max(across2, shear2)) return s1 >= 0 ? "fibreTension" : "fibreCompression";
  if (shear2 > across2) return "shear";
  return s2 >= 0 ? "transverseTension" : "transverseCompression";
}
function hashinEfforts(s1, s2, s12, c) {
  const shear2 = (s12 / c.S) ** 2;
  const inFibre = s1 >= 0 ? c.alpha * shear2 : 0;
  const fibre2 = (s1 >= 0 ? (s1 / c.Xt) ** 2 : (s1 / c.Xc) ** 2) + inFibre;
  const matrix = s2 >= 0 ? (s2 / c.Yt) ** 2 + shear2 : (s2 / (2 * c.ST)) ** 2 + ((c.Yc / (2 * c.ST)) ** 2 - 1) * (s2 / c.Yc) + shear2;
  return { fibre: fibre2, matrix, inFibre, inMatrix: shear2 };
}
function hashinMode(s1, s2, s12, c) {
  const { fibre: fibre2, matrix } = hashinEfforts(s1, s2, s12, c);
  if (fibre2 > clearly * matrix) return s1 >= 0 ? "fibreTension" : "fibreCompression";
  return s2 >= 0 ? "matrixTension" : "matrixCompression";
}
var warp = (s1) => s1 >= 0 ? "warpTension" : "warpCompression";
var weft = (s2) => s2 >= 0 ? "weftTension" : "weftCompression";
function clothMode(criterion, s1, s2, s12, c) {
  if (criterion === "hashin") {
    const { fibre: fibre2, matrix, inFibre, inMatrix } = hashinEfforts(s1, s2, s12, c);
    const [key, whole2, shear3] = fibre2 > clearly * matrix ? [warp(s1), fibre2, inFibre] : [weft(s2), matrix, inMatrix];
    return whole2 - shear3 > clearly * shear3 ? key : "clothShear";
  }
  const [e1, e2] = direct(criterion, s1, s2, c);
  const { along: along2, across: across2, shear: shear2 } = shares2(e1, e2, s12, c);
  if (Math.max(along2, across2) <= clearly * shear2) return "clothShear";
  return along2 > across2 ? warp(e1) : weft(e2);
}
function matMode(criterion, s1, s2, s12, c) {
  const [e1, e2] = direct(criterion, s1, s2, c);
  const { along: along2, across: across2, shear: shear2 } = shares2(e1, e2, s12, c);
  if (Math.max(along2, across2) <= clearly * shear2) return "matShear";
  return (along2 > across2 ? e1 : e2) >= 0 ? "matTension" : "matCompression";
}
var direct = (criterion, s1, s2, c) => criterion === "maxStrain" ? [s1 - c.nu12 * s2, s2 - c.nu21 * s1] : [s1, s2];
function puckMode(s1, s2, s12, c) {
  const { S, Yt, Yc, pPlus, pMinus, pAcross, RA } = c;
  const fibre2 = s1 >= 0 ? s1 / c.Xt : -s1 / c.Xc;
  const upright = s2 >= 0 || -s2 * c.shearAtJoint <= RA * Math.abs(s12);
  const between4 = () => {
    if (s2 >= 0) return Math.hypot(s12 / S, (1 - pPlus * Yt / S) * (s2 / Yt)) + pPlus * s2 / S;
    if (upright) return (Math.hypot(s12, pMinus * s2) + pMinus * s2) / S;
    const k = 2 * (1 + pAcross) * S;
    return s12 / k * (s12 / -s2) * (Yc / k) - s2 / Yc;
  };
  if (fibre2 > clearly * between4()) return named(s1 >= 0 ? "fibreTension" : "fibreCompression");
  if (upright) return { ...named(s2 >= 0 ? "puckA" : "puckB"), fractureAngle: 0 };
  const cosine = Math.sqrt(Math.min(1, RA / -s2));
  return { ...named("puckC"), fractureAngle: Math.acos(cosine) * 180 / Math.PI };
}

// packages/core/src/laminate/strength/tsai-wu-coefficients.ts
function tsaiWuCoefficients({ Xt, Xc, Yt, Yc, S }, F12star = -0.5) {
  if (!(Math.abs(F12star) < 1)) {
    fail({
      code: "out-of-range",
      message: `F12star = ${F12star} opens the failure surface: some stress of any size would never break the ply`,
      allowed: "more than -1 and less than 1"
    });
  }
  const F11 = 1 / (Xt * Xc);
  const F22 = 1 / (Yt * Yc);
  return {
    F1: 1 / Xt - 1 / Xc,
    F2: 1 / Yt - 1 / Yc,
    F11,
    F22,
    F66: 1 / (S * S),
    F12: F12star * Math.sqrt(F11 * F22)
  };
}

// packages/core/src/laminate/strength/strength-constants.ts
function strengthConstants({ E1, E2, nu12, name, strengths: strengths2 }, criterion, options = {}) {
  const { Xt, Xc, Yt, Yc, S } = strengths2;
  for (const [symbol, value] of Object.entries({ Xt, Xc, Yt, Yc, S })) positive2(symbol, value);
  const variant2 = choice("variant", options.variant ?? "sign", tsaiHillVariants);
  const ST = options.transverseShearStrength ?? Yc / 2;
  const alpha = options.alpha ?? 1;
  const p2 = puckInclination(options);
  if (criterion === "hashin") checkHashin(ST, alpha);
  if (criterion === "puck") checkPuck(p2.plus, p2.minus, strengths2, name);
  const RA = Yc / (1 + Math.sqrt(1 + 2 * p2.minus * Yc / S));
  const pAcross = p2.minus * RA / S;
  return {
    Xt,
    Xc,
    Yt,
    Yc,
    S,
    nu12,
    nu21: nu12 * E2 / E1,
    hillXc: variant2 === "tensile" ? Xt : Xc,
    hillYc: variant2 === "tensile" ? Yt : Yc,
    hillCrossBySigma2: variant2 === "crossTerm" ? 1 : 0,
    ...tsaiWuCoefficients(strengths2, criterion === "tsaiWu" ? options.F12star : void 0),
    ST,
    alpha,
    pPlus: p2.plus,
    pMinus: p2.minus,
    pAcross,
    RA,
    shearAtJoint: S * Math.sqrt(1 + 2 * pAcross)
  };
}
function positive2(name, value) {
  if (value > 0 && Number.isFinite(value)) return;
  fail({ code: "out-of-range", message: `the strength ${name} is ${value} Pa`, allowed: "a finite number above 0" });
}
function checkHashin(ST, alpha) {
  positive2("transverseShearStrength", ST);
  if (alpha >= 0 && alpha <= 1) return;
  fail({ code: "out-of-range", message: `alpha of the criterion of Hashin is ${alpha}`, allowed: "0 to 1" });
}
function checkPuck(plus, minus2, { Yt, S }, name) {
  if (!(minus2 >= 0 && Number.isFinite(minus2))) {
    fail({ code: "out-of-range", message: `the inclination \`minus\` is ${minus2}`, allowed: "a finite number from 0" });
  }
  if (plus >= 0 && plus * Yt < S) return;
  fail({
    code: "out-of-range",
    message: `the inclination \`plus\` is ${plus}, the ply${name === void 0 ? "" : ` ${name}`} has S/Yt = ${Number((S / Yt).toPrecision(4))}`,
    allowed: "from 0 to less than S/Yt: beyond, the curve no longer meets Yt"
  });
}

// packages/core/src/laminate/strength/strength-ratio.ts
var noStress2 = [0, 0, 0];
function pointFailure(criterion, s, r, c, lay = "unidirectional") {
  if (lay === "mat") {
    const { ratio: ratio2, stress, residual: residual3 } = weakestAxes(criterion, s, r, c, Number.POSITIVE_INFINITY);
    return failureAt(criterion, ratio2, stress, residual3, c, lay);
  }
  const ratio = ratioFunctions[criterion](s[0], s[1], s[2], r[0], r[1], r[2], c, Number.POSITIVE_INFINITY);
  return failureAt(criterion, ratio, s, r, c, lay);
}
function failureAt(criterion, ratio, s, r, c, lay) {
  if (!Number.isFinite(ratio)) return { ratio: void 0, ...noMode };
  const at4 = [r[0] + ratio * s[0], r[1] + ratio * s[1], r[2] + ratio * s[2]];
  return { ratio, ...modeAt(criterion, at4, c, lay) };
}
var brokenByResidual = {
  level: "warning",
  text: "The residual stress alone reaches the failure limit: no load is carried before first failure."
};
function strengthRatio(ply3, stress, criterion, options = {}) {
  choice("criterion", criterion, failureCriteria);
  const { strengths: strengths2 } = ply3;
  if (strengths2 === void 0) {
    return fail({
      code: "not-computable",
      message: "the ply has no strengths, so its strength ratio cannot be computed",
      allowed: "a ply with Xt, Xc, Yt, Yc and S"
    });
  }
  const { residual: residual3 = noStress2 } = options;
  for (const [name, values] of Object.entries({ stress, residual: residual3 })) {
    const odd = values.find((value) => !Number.isFinite(value));
    if (odd !== void 0) {
      fail({ code: "not-a-number", message: `${name} holds ${odd}`, allowed: "finite numbers, Pa" });
    }
  }
  const found = pointFailure(criterion, stress, residual3, strengthConstants({ ...ply3, strengths: strengths2 }, criterion, options));
  return {
    criterion,
    ...found,
    notes: [...criterionNotes(criterion, options), ...found.ratio === 0 ? [brokenByResidual] : []],
    sources: criterionSources[criterion]
  };
}

// packages/core/src/laminate/strength/face-stress.ts
var faceStress = ({ plies: plies2 }) => plies2.map(({ top, bottom }) => ({ top: top.stress12, bottom: bottom.stress12 }));
var unstressed = ({ plies: plies2 }) => plies2.map(() => ({ top: noStress2, bottom: noStress2 }));
function residualState(laminate2, load) {
  if (load === void 0) return { strain: noStress2, curvature: noStress2, notes: [], stress: unstressed(laminate2) };
  const response = respond(laminate2, load);
  return { ...response, stress: faceStress(response) };
}

// packages/core/src/laminate/strength/laminate-strength.ts
function laminateStrength({ plies: plies2 }, criterion, options) {
  const lays = plies2.map(layOf);
  const bare = [];
  const notForPuck = [];
  const constants3 = plies2.map((ply3, k) => {
    const { strengths: strengths2 } = ply3;
    if (strengths2 !== void 0) {
      if (criterion !== "puck" || lays[k] === "unidirectional") {
        return strengthConstants({ ...ply3, strengths: strengths2 }, criterion, options);
      }
      notForPuck.push(ply3);
      return void 0;
    }
    if (ply3.core === true) {
      bare.push(`${k + 1} (${ply3.name})`);
      return void 0;
    }
    return fail({
      code: "not-computable",
      message: `ply ${k + 1} (${ply3.name}) has no strengths, so the failure of the laminate cannot be computed`,
      allowed: "Xt, Xc, Yt, Yc and S for every ply; a core may be without",
      hint: "give the material its strengths"
    });
  });
  if (bare.length === plies2.length) {
    fail({
      code: "not-computable",
      message: "no ply of the laminate has strengths, so its failure cannot be computed",
      allowed: "at least one ply with Xt, Xc, Yt, Yc and S"
    });
  }
  if (constants3.every((one) => one === void 0)) {
    fail({
      code: "not-computable",
      message: `Puck is made for unidirectional plies, and the laminate has cloth or mat only (${namesOf(notForPuck)})`,
      allowed: "at least one unidirectional ply with strengths, or another criterion"
    });
  }
  return { constants: constants3, lays, partly: notForPuck.length > 0, notes: notesOf(plies2, { lays, bare, notForPuck }) };
}
var namesOf = (plies2) => [...new Set(plies2.map(({ name }) => name))].join(", ");
function notesOf(plies2, found) {
  const { lays, bare, notForPuck } = found;
  const judged = (lay) => plies2.filter((ply3, k) => ply3.strengths !== void 0 && lays[k] === lay && !notForPuck.includes(ply3));
  const [cloth, mat] = [judged("cloth"), judged("mat")];
  const texts = [
    ...bare.length === 0 ? [] : [`Ply ${bare.join(", ")}: a core without strengths, left out of the failure check.`],
    ...notForPuck.length === 0 ? [] : [`Puck is made for unidirectional plies: cloth and mat (${namesOf(notForPuck)}) are left out of it.`],
    ...cloth.length === 0 ? [] : [
      `Cloth (${namesOf(cloth)}) has fibres along 1, its warp, and along 2, its weft: Yt and Yc are strengths of the weft.`
    ],
    ...mat.length === 0 ? [] : [
      `Mat (${namesOf(mat)}) has no direction: it is judged in the weakest of all directions of its axes, whatever its angle.`
    ]
  ];
  return texts.map((text3) => ({ level: "assumption", text: text3 }));
}

// packages/core/src/laminate/strength/split-load.ts
function splitLoad(load) {
  const { temperatureChange = 0, temperatureGradient = 0, moisture: moisture2 = 0, ...mechanical } = load;
  const none3 = temperatureChange === 0 && temperatureGradient === 0 && moisture2 === 0;
  return {
    mechanical,
    residual: none3 ? void 0 : { temperatureChange, temperatureGradient, moisture: moisture2, ...held(load) }
  };
}
function held({ strain: strain2, curvature }) {
  return {
    ...strain2 === void 0 ? {} : { strain: zeroed(strain2) },
    ...curvature === void 0 ? {} : { curvature: zeroed(curvature) }
  };
}
function zeroed([x, y, xy]) {
  const zero2 = (value) => value === null ? null : 0;
  return [zero2(x), zero2(y), zero2(xy)];
}

// packages/core/src/laminate/strength/solved-load.ts
function solveLoad(laminate2, load) {
  const { mechanical, residual: residual3 } = splitLoad(load);
  return {
    mechanical: respond(laminate2, mechanical),
    residual: residual3 === void 0 ? void 0 : respond(laminate2, residual3)
  };
}

// packages/core/src/laminate/strength/weakest.ts
var alike3 = 1e-12;
var orNever = (ratio) => ratio ?? Number.POSITIVE_INFINITY;
var less = (a, b) => orNever(a) < orNever(b) * (1 - alike3);
function plyFailure({ plies: plies2 }, k, top, bottom) {
  const face = less(bottom.ratio, top.ratio) ? "bottom" : "top";
  const { name = "", angle: angle2 = 0 } = plies2[k] ?? {};
  return { ply: k + 1, name, angle: angle2, face, ...face === "bottom" ? bottom : top, top, bottom };
}
function plyFailures(laminate2, criterion, { constants: constants3, lays }, mechanical, residual3) {
  return constants3.flatMap((c, k) => {
    const s = mechanical[k];
    const r = residual3[k];
    if (c === void 0 || s === void 0 || r === void 0) return [];
    const at4 = (face) => pointFailure(criterion, s[face], r[face], c, lays[k]);
    return [plyFailure(laminate2, k, at4("top"), at4("bottom"))];
  });
}
function weakest(plies2) {
  let first2;
  for (const ply3 of plies2) if (less(ply3.ratio, first2?.ratio)) first2 = ply3;
  return first2;
}

// packages/core/src/laminate/strength/failure.ts
function failureUnder(laminate2, { mechanical, residual: residual3 }, criterion, options = {}) {
  choice("criterion", criterion, failureCriteria);
  const strength = laminateStrength(laminate2, criterion, options);
  const s = faceStress(mechanical);
  const none3 = unstressed(laminate2);
  const perPly = plyFailures(laminate2, criterion, strength, s, residual3 === void 0 ? none3 : faceStress(residual3));
  const first2 = firstFailure(perPly);
  const naming = () => {
    const other = renamed(laminate2);
    const [t, rest] = [s, residual3 === void 0 ? none3 : faceStress(residual3)].map(
      (one) => inRenamedAxes(laminate2, one)
    );
    const plies2 = plyFailures(other, criterion, laminateStrength(other, criterion, options), t ?? [], rest ?? []);
    return namingNotes(criterion, "first", first2.ratio, firstFailure(plies2).ratio);
  };
  const alone = residual3 === void 0 ? void 0 : firstFailure(plyFailures(laminate2, criterion, strength, s, none3));
  return {
    criterion,
    ...first2,
    ...alone === void 0 ? {} : { withoutResidual: alone },
    perPly,
    notes: uniqueNotes([
      ...criterionNotes(criterion, options),
      ...strength.notes,
      ...dependsOnNaming(laminate2, criterion) ? naming() : [],
      ...residual3 === void 0 ? [] : [notMultiplied],
      ...first2.ratio === 0 ? [brokenByResidual] : [],
      ...first2.ratio === void 0 ? [unloaded] : [],
      ...mechanical.notes,
      ...residual3?.notes ?? []
    ]),
    sources: uniqueSources(mechanical.sources, criterionSources[criterion])
  };
}
var notMultiplied = {
  level: "assumption",
  text: "Stress from heat and moisture stays as it is; the strength ratio multiplies the mechanical load only."
};
var unloaded = {
  level: "warning",
  text: "The load puts no mechanical stress on any ply that has strengths, so there is no strength ratio."
};
function firstFailure(plies2) {
  const found = weakest(plies2);
  if (found === void 0) return { ratio: void 0, ply: void 0, name: void 0, face: void 0, ...noMode };
  const { ratio, ply: ply3, name, face, modeKey, mode, fractureAngle } = found;
  return { ratio, ply: ply3, name, face, modeKey, mode, ...fractureAngle === void 0 ? {} : { fractureAngle } };
}

// packages/core/src/laminate/strength/weakest-direction.ts
var faces = ["top", "bottom"];
var sum4 = (p2, q, x, y) => [
  x * p2[0] + y * q[0],
  x * p2[1] + y * q[1],
  x * p2[2] + y * q[2]
];
function weakestAlong({ plies: plies2 }, criterion, { constants: constants3, lays }, [sx, sy, cured], x, y) {
  const ratioOf = ratioFunctions[criterion];
  let first2;
  for (const [k2, c2] of constants3.entries()) {
    const [p3, q2, r2] = [sx[k2], sy[k2], cured[k2]];
    if (c2 === void 0 || p3 === void 0 || q2 === void 0 || r2 === void 0) continue;
    for (const face2 of faces) {
      const limit5 = first2?.ratio ?? Number.POSITIVE_INFINITY;
      const [a, b] = [p3[face2], q2[face2]];
      const [r1, r22, r12] = r2[face2];
      const ratio = lays[k2] === "mat" ? weakestAxes(criterion, sum4(a, b, x, y), r2[face2], c2, limit5).ratio : ratioOf(x * a[0] + y * b[0], x * a[1] + y * b[1], x * a[2] + y * b[2], r1, r22, r12, c2, limit5);
      if (less(ratio, first2?.ratio)) first2 = { k: k2, face: face2, ratio };
    }
  }
  if (first2 === void 0) return void 0;
  const { k, face } = first2;
  const [p2, q, r, c] = [sx[k]?.[face], sy[k]?.[face], cured[k]?.[face], constants3[k]];
  if (p2 === void 0 || q === void 0 || r === void 0 || c === void 0) return void 0;
  return { ply: k + 1, name: plies2[k]?.name ?? "", face, ...pointFailure(criterion, sum4(p2, q, x, y), r, c, lays[k]) };
}

// packages/core/src/laminate/strength/failure-envelope.ts
var loadComponents = ["Nx", "Ny", "Nxy", "Mx", "My", "Mxy"];
function solvePlane(laminate2, components, surroundings) {
  const [first2, second2] = components;
  for (const name of components) choice("component", name, loadComponents);
  if (first2 === second2) {
    fail({ code: "contradiction", message: `both components are ${first2}`, allowed: "two different components" });
  }
  const { temperatureChange = 0, temperatureGradient = 0, moisture: moisture2 = 0 } = surroundings;
  const { residual: residual3 } = splitLoad({ temperatureChange, temperatureGradient, moisture: moisture2 });
  return {
    components,
    units: [respond(laminate2, unitLoad(first2)), respond(laminate2, unitLoad(second2))],
    residual: residual3 === void 0 ? void 0 : respond(laminate2, residual3)
  };
}
function envelopeOf(laminate2, { components, units: units2, residual: residual3 }, options) {
  const { criterion } = options;
  const [first2, second2] = components;
  const count = checkedCount(options.count ?? 72);
  const strength = laminateStrength(laminate2, criterion, options);
  const [sx, sy] = [faceStress(units2[0]), faceStress(units2[1])];
  const cured = residual3 === void 0 ? unstressed(laminate2) : faceStress(residual3);
  const at4 = (x, y) => weakestAlong(laminate2, criterion, strength, [sx, sy, cured], x, y);
  const size4 = (name, x, y) => Math.max(at4(x, y)?.ratio ?? stressless(name), at4(-x, -y)?.ratio ?? stressless(name));
  const [width, height] = [size4(first2, 1, 0), size4(second2, 0, 1)];
  const points4 = Array.from({ length: count }, (_, i) => {
    const x = width * cosDegrees(360 * i / count);
    const y = height * sinDegrees(360 * i / count);
    const broken = width === 0 || height === 0;
    const found = (broken ? at4(1, 0) : at4(x, y)) ?? stressless(first2);
    const ratio = broken ? 0 : found.ratio ?? 0;
    const { ply: ply3, name, face, modeKey, mode, fractureAngle } = found;
    const angle2 = fractureAngle === void 0 ? {} : { fractureAngle };
    return { x: ratio * x + 0, y: ratio * y + 0, ply: ply3, name, face, modeKey, mode, ...angle2 };
  });
  const start = points4[0];
  return {
    criterion,
    components,
    points: start === void 0 ? points4 : [...points4, start],
    notes: uniqueNotes([
      ...criterionNotes(criterion, options),
      ...strength.notes,
      ...residual3 === void 0 ? [] : [notMultiplied],
      ...width === 0 ? [brokenByResidual] : [],
      ...units2.flatMap(({ notes: notes4 }) => notes4),
      ...residual3?.notes ?? []
    ]),
    sources: uniqueSources(...units2.map(({ sources }) => sources), criterionSources[criterion])
  };
}
function unitLoad(name) {
  const of = (x, y, xy) => [
    Number(name === x),
    Number(name === y),
    Number(name === xy)
  ];
  return { N: of("Nx", "Ny", "Nxy"), M: of("Mx", "My", "Mxy") };
}
function checkedCount(count) {
  if (Number.isInteger(count) && count % 4 === 0 && count >= 4 && count <= 3600) return count;
  return fail({ code: "out-of-range", message: `count is ${count}`, allowed: "a multiple of 4 from 4 to 3600" });
}
function stressless(name) {
  return fail({
    code: "not-computable",
    message: `${name} stresses no ply that has strengths, so the envelope is not closed`,
    allowed: "two components that each stress some ply"
  });
}

// packages/core/src/laminate/strength/damage-state.ts
function damageState(laminate2, load, damage, factor) {
  const left4 = damaged(laminate2, damage, factor);
  const response = respond(left4, load.mechanical);
  const { strain: strain2, curvature, N, M: M3 } = response;
  return {
    laminate: left4,
    mechanical: { strain: strain2, curvature, stress: faceStress(response) },
    residual: residualState(left4, load.residual),
    work: dot2(applied(load.mechanical.N, N), strain2) + dot2(applied(load.mechanical.M, M3), curvature)
  };
}
function remainingFailures({ laminate: laminate2, mechanical, residual: residual3 }, damage, criterion, { constants: constants3, lays }) {
  return constants3.flatMap((c, k) => {
    const s = mechanical.stress[k];
    const r = residual3.stress[k];
    const state = damage[k] ?? "whole";
    if (c === void 0 || s === void 0 || r === void 0 || state === "failed") return [];
    const by = criterion === "puck" && lays[k] !== "unidirectional" ? "maxStress" : criterion;
    const at4 = (face) => state === "whole" ? pointFailure(by, s[face], r[face], c, lays[k]) : fibreFailure(s[face], r[face], c, lays[k]);
    return [plyFailure(laminate2, k, at4("top"), at4("bottom"))];
  });
}
function fibreFailure([s1, s2], [r1, r2], c, lay) {
  const along2 = linearLimit(r1, s1, c.Xt, c.Xc);
  const across2 = lay === "cloth" ? linearLimit(r2, s2, c.Yt, c.Yc) : Number.POSITIVE_INFINITY;
  const ratio = Math.min(along2, across2);
  if (!Number.isFinite(ratio)) return { ratio: void 0, ...noMode };
  const at4 = across2 < along2 ? [0, r2 + ratio * s2, 0] : [r1 + ratio * s1, 0, 0];
  return { ratio, ...modeAt("maxStress", at4, c, lay) };
}
var applied = (given, all) => {
  const one = (i) => given?.[i] == null ? 0 : all[i];
  return [one(0), one(1), one(2)];
};
var dot2 = (p2, q) => p2[0] * q[0] + p2[1] * q[1] + p2[2] * q[2];

// packages/core/src/laminate/strength/progressive-checks.ts
function checkedShare(name, value, least2) {
  if (value >= least2 && value < 1) return value;
  const from = least2 > 1e-300 ? `${least2}` : "above 0";
  return fail({ code: "out-of-range", message: `${name} is ${value}`, allowed: `from ${from} to less than 1` });
}
function checkedLoad(load) {
  const prescribed = [...load.strain ?? [], ...load.curvature ?? []].find((value) => value !== null && value !== 0);
  if (prescribed !== void 0) {
    fail({
      code: "not-computable",
      message: `the load prescribes a deformation of ${prescribed}; progressive failure raises forces`,
      allowed: "N and M; strain and curvature of 0 or null only"
    });
  }
  return splitLoad(load);
}

// packages/core/src/laminate/strength/progressive-failure.ts
var together = 1 + 1e-9;
function progressiveFailure(laminate2, load, options) {
  const found = follow(laminate2, load, options);
  if (!dependsOnNaming(laminate2, found.criterion)) return found;
  const other = follow(renamed(laminate2), load, options);
  const naming = namingNotes(found.criterion, "last", found.lastPly.ratio, other.lastPly.ratio);
  return { ...found, notes: uniqueNotes([...found.notes, ...naming]) };
}
function follow(laminate2, load, options) {
  const criterion = choice("criterion", options.criterion, failureCriteria);
  const discount = choice("discount", options.discount ?? "matrix", discounts);
  const factor = checkedShare("factor", options.factor ?? 0.01, 1e-6);
  const collapse = checkedShare("collapse", options.collapse ?? 0.1, Number.MIN_VALUE);
  const strength = withCloth(laminate2, laminateStrength(laminate2, criterion, options), options);
  const split = checkedLoad(load);
  const damage = laminate2.plies.map(() => "whole");
  const start = damageState(laminate2, split, damage, factor);
  if (!(start.work > 0)) stressless2();
  const steps = [];
  const curve = [pointAt(start, start, 0)];
  let state = start;
  let reached = 0;
  let share2 = 1;
  while (share2 >= collapse) {
    const plies2 = remainingFailures(state, damage, criterion, strength);
    const next = weakest(plies2)?.ratio;
    if (next === void 0) break;
    const cascade = steps.length > 0 && next <= reached * together;
    reached = Math.max(reached, next);
    const failing = plies2.filter(({ ratio }) => ratio !== void 0 && ratio <= next * together);
    const before2 = pointAt(start, state, reached);
    const changed = failing.map((ply3) => discountOf(ply3, damage[ply3.ply - 1] ?? "whole", discount));
    for (const { ply: ply3, becomes } of changed) damage[ply3 - 1] = becomes;
    state = damageState(laminate2, split, damage, factor);
    share2 = start.work / state.work;
    const after = pointAt(start, state, reached);
    if (!cascade) curve.push(before2);
    if (share2 >= collapse) curve.push(after);
    steps.push({
      ratio: reached,
      cascade,
      plies: changed,
      before: before2,
      after,
      stiffnessShare: share2,
      inPlane: engineeringConstants(stiffness(state.laminate)).inPlane
    });
  }
  const first2 = steps[0];
  if (first2 === void 0) return stressless2();
  const notes4 = [
    ...criterionNotes(criterion, options),
    ...strength.notes,
    discountNote(discount, factor),
    ...layNotes(strength, discount),
    ...split.residual === void 0 ? [] : [notMultiplied],
    ...first2.ratio === 0 ? [brokenByResidual] : [],
    ...share2 >= collapse ? [neverCollapses] : [],
    ...laminate2.notes
  ];
  return {
    criterion,
    discount,
    factor,
    collapse,
    firstPly: first2,
    lastPly: steps.at(-1) ?? first2,
    collapsed: share2 < collapse,
    steps,
    curve,
    notes: uniqueNotes(notes4),
    sources: uniqueSources(laminate2.sources, ["jones-1999", "hahn-tsai-1974"], criterionSources[criterion])
  };
}
function discountOf(failing, was, discount) {
  const { ply: ply3, name, angle: angle2, face, modeKey, mode } = failing;
  const lost = discount === "total" || was === "cracked" || breaksFibres(modeKey);
  return { ply: ply3, name, angle: angle2, face, modeKey, mode, becomes: lost ? "failed" : "cracked" };
}
function pointAt(start, { mechanical, residual: residual3 }, ratio) {
  const sum5 = (key) => {
    const one = (i) => ratio * mechanical[key][i] + (residual3[key][i] - start.residual[key][i]);
    return [one(0), one(1), one(2)];
  };
  return { ratio, strain: sum5("strain"), curvature: sum5("curvature") };
}
var discountNote = (discount, factor) => ({
  level: "assumption",
  text: discount === "total" ? `Ply discount: a ply that fails keeps ${factor} of E1, E2 and G12 in the whole of its area.` : `Ply discount: a ply whose matrix fails keeps ${factor} of E2, G12 and nu12, one whose fibres fail ${factor} of E1, E2 and G12, in the whole of its area.`,
  source: "hahn-tsai-1974"
});
function layNotes({ lays, constants: constants3 }, discount) {
  if (discount === "total") return [];
  const has = (lay) => lays.some((one, k) => one === lay && constants3[k] !== void 0);
  const texts = [
    ...has("cloth") ? [
      "A cloth whose matrix shears keeps E1 and E2; one whose warp or weft breaks has failed as one whose fibres fail."
    ] : [],
    ...has("mat") ? ["A mat that breaks, in whatever way, has failed as a ply whose fibres fail."] : []
  ];
  return texts.map((text3) => ({ level: "assumption", text: text3 }));
}
function withCloth(laminate2, strength, options) {
  if (!strength.partly) return strength;
  const { constants: constants3, notes: notes4 } = laminateStrength(laminate2, "maxStress", options);
  const byStress = {
    level: "assumption",
    text: "Layer by layer, cloth and mat fail by maximum stress in place of Puck."
  };
  return { ...strength, constants: constants3, notes: [...strength.notes, ...notes4, byStress] };
}
var neverCollapses = {
  level: "warning",
  text: "No ply is left that a higher load would break, yet the laminate kept its stiffness: the last ratio is not the end of what it carries."
};
function stressless2() {
  return fail({
    code: "not-computable",
    message: "the load puts no mechanical stress on any ply that has strengths, so nothing fails however far it is raised",
    allowed: "a load with a force or moment other than 0"
  });
}

// packages/core/src/laminate/strength-table.ts
function makeStrengthTable(materials, angles, criterion, options = {}) {
  choice("criterion", criterion, failureCriteria);
  checkFinite("angles", angles);
  const stress = new Float64Array(materials.length * angles.length * STRESS_ROW);
  const constants3 = [];
  for (const material2 of materials) {
    const { E1, E2, G12, nu12, expansion: expansion2, strengths: strengths2 } = material2;
    checkFinite("materials", [E1, E2, G12, nu12, expansion2?.alpha1 ?? 0, expansion2?.alpha2 ?? 0]);
    const left4 = strengths2 === void 0 || criterion === "puck" && layOf(material2) !== "unidirectional";
    const own2 = left4 ? void 0 : strengthConstants({ ...material2, strengths: strengths2 }, criterion, options);
    writeStressRows(material2, angles, stress, constants3.length * STRESS_ROW);
    for (let i = 0; i < angles.length; i++) constants3.push(own2);
  }
  return { criterion, stress, constants: constants3, expands: materials.every(({ expansion: expansion2 }) => expansion2 !== void 0) };
}

// packages/core/src/fracture/arm-of.ts
var assumedNu232 = 0.4;
var never = 1e30;
function armOf(laminate2, options = {}) {
  const { across: across2 = "held" } = options;
  const s = stiffness(laminate2);
  const { A, a, b, d, notes: notes4, sources } = s;
  const [A11, A16, A66] = [A[0][0] ?? 0, A[0][2] ?? 0, A[2][2] ?? 1];
  const [a11, b11, d11] = [a[0][0] ?? 0, b[0][0] ?? 0, d[0][0] ?? 0];
  const shear2 = transverseShear(laminate2);
  const through = throughThickness2(laminate2, options.E3);
  const strain2 = failureStrain(laminate2, options);
  return {
    thickness: laminate2.thickness,
    bendingStiffness: across2 === "held" ? stripStiffness(s).D11 : 1 / d11,
    axialStiffness: across2 === "held" ? A11 - A16 * A16 / A66 : d11 / (a11 * d11 - b11 * b11),
    shearStiffness: shear2.H[0][0],
    E3: through.E3,
    ...strain2.limits === void 0 ? {} : { failureStrain: strain2.limits },
    notes: uniqueNotes([...notes4, ...shear2.notes, ...through.notes, ...strain2.notes]),
    sources: uniqueSources(sources, shear2.sources, strain2.sources)
  };
}
function throughThickness2({ plies: plies2, thickness }, given) {
  if (given !== void 0) {
    if (!(given > 0 && Number.isFinite(given))) {
      fail({ code: "out-of-range", message: `E3 = ${given} Pa, must be above 0`, allowed: "a finite number above 0" });
    }
    return { E3: given, notes: [] };
  }
  const E3 = (ply3) => ply3.E3 ?? 2 * (1 + (ply3.nu23 ?? assumedNu232)) * plyShear(ply3).G23;
  const assumed = plies2.some((ply3) => ply3.E3 === void 0);
  return {
    E3: thickness / plies2.reduce((sum5, ply3) => sum5 + ply3.thickness / E3(ply3), 0),
    notes: assumed ? [
      {
        level: "assumption",
        text: "Modulus through the thickness from the plies, 2 (1 + nu23) G23 where not given."
      }
    ] : []
  };
}
function failureStrain(laminate2, { across: across2 = "held", crackFace = "bottom", breaking = "anything" }) {
  const curvature = crackFace === "bottom" ? 1 : -1;
  const open = across2 === "held" ? 0 : null;
  const { plies: plies2 } = respond(laminate2, { strain: [null, open, open], curvature: [curvature, open, open] });
  const found = { tension: Number.POSITIVE_INFINITY, compression: Number.POSITIVE_INFINITY };
  const sources = [];
  let matrix = false;
  for (const [i, ply3] of laminate2.plies.entries()) {
    const { strengths: strengths2 } = ply3;
    const response = plies2[i];
    if (response === void 0 || strengths2 === void 0 && ply3.core) continue;
    if (strengths2 === void 0) return withoutStrengths(ply3);
    const shear2 = breaking === "fibres" ? { S: never } : {};
    const transverse = breaking === "fibres" && !isCloth(ply3) ? { Yt: never, Yc: never } : {};
    const judged = { ...ply3, strengths: { ...strengths2, ...shear2, ...transverse } };
    const judge3 = ({ stress12, strain: strain2 }) => {
      const { ratio = Number.POSITIVE_INFINITY, modeKey, sources: own2 } = strengthRatio(judged, stress12, "maxStrain");
      const side2 = strain2[0] >= 0 ? "tension" : "compression";
      if (ratio >= found[side2]) return;
      found[side2] = ratio;
      matrix ||= !isCloth(ply3) && modeKey !== "fibreTension" && modeKey !== "fibreCompression";
      sources.push(...own2);
    };
    judge3(response.top);
    judge3(response.bottom);
  }
  const half = laminate2.thickness / 2;
  if (!(Number.isFinite(found.tension) && Number.isFinite(found.compression))) return { notes: [], sources: [] };
  return {
    limits: { tension: found.tension * half, compression: found.compression * half },
    notes: matrix ? [
      {
        level: "assumption",
        text: "The failure strain of the arm is that of first cracking between fibres; fibres may carry on."
      }
    ] : [],
    sources
  };
}
function withoutStrengths({ name }) {
  return {
    notes: [{ level: "assumption", text: `Ply ${name} has no strengths: breaking of the arm is not checked.` }],
    sources: []
  };
}

// packages/core/src/stitch/check.ts
function inMillimetres(length2) {
  return `${Number((length2 * 1e3).toPrecision(4))} mm`;
}
function requirePositive(name, value, show = String) {
  if (!(value > 1e-100 && value < 1e100)) {
    fail({
      code: "out-of-range",
      message: `${name} = ${show(value)}, must be above 0`,
      allowed: "a finite number above 0"
    });
  }
}
function requireNotNegative(name, value, show = String) {
  if (!(Number.isFinite(value) && value >= 0)) {
    fail({
      code: "out-of-range",
      message: `${name} = ${show(value)}, must not be below 0`,
      allowed: "a finite number, 0 or above"
    });
  }
}

// packages/core/src/stitch/check-pattern.ts
function checkPattern(pattern2) {
  if (pattern2.kind === "rows") {
    checkRows(pattern2.rows, pattern2.bandWidth);
    return;
  }
  length("pitch", pattern2.pitch);
  length("rowSpacing", pattern2.rowSpacing);
  if (pattern2.kind === "zigzag") length("swing", pattern2.swing);
  if (pattern2.kind === "staggered") {
    const shift = pattern2.shift ?? 0.5;
    if (!(shift >= 0 && shift < 1)) {
      fail({
        code: "out-of-range",
        message: `shift = ${shift}, must be at least 0 and below 1`,
        allowed: "a fraction of the pitch, 0 to below 1",
        hint: "one half puts the holes of a row midway between those of its neighbours"
      });
    }
  }
  if (pattern2.kind === "crossing") {
    length("pitch of the second set", pattern2.second.pitch);
    length("rowSpacing of the second set", pattern2.second.rowSpacing);
    const angle2 = pattern2.angle ?? 90;
    if (!(angle2 > 0 && angle2 < 180)) {
      fail({
        code: "out-of-range",
        message: `angle = ${angle2} deg between the sets, must be above 0 and below 180 deg`,
        allowed: "above 0, below 180 deg",
        hint: "two sets in the same direction are one set with closer rows"
      });
    }
    for (const [axis, value] of Object.entries(pattern2.offset ?? {})) {
      if (!Number.isFinite(value)) {
        fail({
          code: "out-of-range",
          message: `offset ${axis} = ${value}, must be finite`,
          allowed: "a finite length"
        });
      }
    }
  }
}
var length = (name, value) => requirePositive(name, value, inMillimetres);
function checkRows(rows, bandWidth) {
  if (rows.length === 0) {
    fail({ code: "out-of-range", message: "rows = 0, a pattern needs at least 1 row", allowed: "one row or more" });
  }
  let last = 0;
  rows.forEach((row, index) => {
    const of = (what) => `${what} of row ${index + 1}`;
    length(of("offset"), row.offset);
    length(of("pitch"), row.pitch);
    length(of("length"), row.length);
    if (row.length < row.pitch) {
      fail({
        code: "out-of-range",
        message: `${of("length")} = ${inMillimetres(row.length)}, must be at least its pitch of ${inMillimetres(row.pitch)}`,
        allowed: "a row of one stitch or more"
      });
    }
    const stagger = row.stagger ?? 0;
    requireNotNegative(of("stagger"), stagger, inMillimetres);
    if (stagger >= row.pitch) {
      fail({
        code: "out-of-range",
        message: `${of("stagger")} = ${inMillimetres(stagger)}, must be below its pitch of ${inMillimetres(row.pitch)}`,
        allowed: "0 to below one pitch"
      });
    }
    if (row.offset <= last) {
      fail({
        code: "out-of-range",
        message: `${of("offset")} = ${inMillimetres(row.offset)}, must be above the ${inMillimetres(last)} of the row before`,
        allowed: "rows in order of their distance from the edge"
      });
    }
    last = row.offset;
  });
  if (bandWidth !== void 0) {
    length("bandWidth", bandWidth);
    const first2 = rows[0]?.offset ?? 0;
    if (bandWidth < last - first2) {
      fail({
        code: "out-of-range",
        message: `bandWidth = ${inMillimetres(bandWidth)}, must be at least the ${inMillimetres(last - first2)} from first to last row`,
        allowed: "a band that holds all rows"
      });
    }
  }
}

// packages/core/src/stitch/ratio.ts
function asRatio(value, largest5) {
  const tolerance2 = 1e-9 * Math.max(1, Math.abs(value));
  let [h0, k0, h1, k1] = [0, 1, 1, 0];
  let rest = value;
  while (Number.isFinite(rest)) {
    const whole2 = Math.round(rest);
    [h0, h1] = [h1, whole2 * h1 + h0];
    [k0, k1] = [k1, whole2 * k1 + k0];
    const k = Math.abs(k1);
    if (k > largest5) return void 0;
    const h = k1 < 0 ? -h1 : h1;
    if (Math.abs(value - h / k) <= tolerance2) return { numerator: h, denominator: k };
    rest = 1 / (rest - whole2);
  }
  return void 0;
}
function commonDivisor(a, b) {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}
function commonMultiple(a, b) {
  return a / commonDivisor(a, b) * b;
}

// packages/core/src/stitch/crossing.ts
var longestRepeat = 200;
function meetings(pattern2) {
  checkPattern(pattern2);
  const { pitch: p1, rowSpacing: s1 } = pattern2;
  const { pitch: p2, rowSpacing: s2 } = pattern2.second;
  const cos = cosDegrees(pattern2.angle ?? 90);
  const sin = sinDegrees(pattern2.angle ?? 90);
  const M3 = [cos * p2 / p1, -sin * s2 / p1, sin * p2 / s1, cos * s2 / s1];
  const [m11, m12, m21, m22] = M3;
  const c = [(pattern2.offset?.x ?? 0) / p1, (pattern2.offset?.y ?? 0) / s1];
  const period = commonDenominator(M3);
  const steps = period ?? longestRepeat;
  const sameHole = 1e-6 * Math.min(p1, s1, p2, s2);
  let matches = 0;
  let closest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const x = m11 * i + m12 * j + c[0];
      const y = m21 * i + m22 * j + c[1];
      const distance2 = Math.hypot((x - Math.round(x)) * p1, (y - Math.round(y)) * s1);
      if (distance2 <= sameHole) matches++;
      else closest = Math.min(closest, distance2);
    }
  }
  if (matches > 0) closest = Math.min(closest, p1, s1, p2, s2);
  const sharedDensity = period === void 0 ? 0 : matches / (period * period * p2 * s2);
  return { repeats: period !== void 0, sharedDensity, closest };
}
function commonDenominator(values) {
  let q = 1;
  for (const value of values) {
    const ratio = asRatio(value, longestRepeat);
    if (ratio === void 0) return void 0;
    q = commonMultiple(q, ratio.denominator);
    if (q > longestRepeat) return void 0;
  }
  return q;
}

// packages/core/src/stitch/edge-rows.ts
function offsetRowLength(length2, distance2, turn) {
  requirePositive("length", length2, inMillimetres);
  requireNotNegative("distance", distance2, inMillimetres);
  requireNotNegative("turn", turn, (angle2) => `${angle2} deg`);
  const inner = length2 - turn * Math.PI * distance2 / 180;
  if (inner <= 0) {
    const largest5 = length2 * 180 / (Math.PI * turn);
    fail({
      code: "out-of-range",
      message: `distance = ${inMillimetres(distance2)} leaves no row, must be below ${inMillimetres(largest5)}`,
      allowed: `below length / turn = ${inMillimetres(largest5)}`
    });
  }
  return inner;
}
function closeRow(row) {
  checkPattern({ kind: "rows", rows: [row] });
  const stitches = Math.max(1, Math.round(row.length / row.pitch));
  const pitch = row.length / stitches;
  const start = (row.stagger ?? 0) / row.pitch * pitch;
  return { stitches, pitch, start, penetrations: start > 0 ? stitches : stitches + 1 };
}
function countedWidth(pattern2) {
  checkPattern(pattern2);
  if (pattern2.bandWidth !== void 0) return pattern2.bandWidth;
  const first2 = pattern2.rows[0]?.offset ?? 0;
  const last = pattern2.rows.at(-1)?.offset ?? 0;
  const rows = pattern2.rows.length;
  return rows === 1 ? 2 * first2 : rows * (last - first2) / (rows - 1);
}

// packages/core/src/stitch/density.ts
function courses(pattern2) {
  checkPattern(pattern2);
  switch (pattern2.kind) {
    case "rows": {
      const width = countedWidth(pattern2);
      const area = width * pattern2.rows.reduce((sum5, row) => sum5 + row.length, 0) / pattern2.rows.length;
      return pattern2.rows.map((row) => {
        const { stitches, pitch } = closeRow(row);
        return { pitch, run: pitch, density: stitches / area, rowLength: row.length / area };
      });
    }
    case "crossing":
      return [pattern2, pattern2.second].map(straight2);
    case "zigzag":
      return [{ ...straight2(pattern2), run: Math.hypot(pattern2.pitch, pattern2.swing) }];
    default:
      return [straight2(pattern2)];
  }
}
function straight2({ pitch, rowSpacing }) {
  return { pitch, run: pitch, density: 1 / (pitch * rowSpacing), rowLength: 1 / rowSpacing };
}
function penetrationDensity(pattern2) {
  return courses(pattern2).reduce((sum5, course) => sum5 + course.density, 0);
}
function holeDensity(pattern2) {
  const all = penetrationDensity(pattern2);
  return pattern2.kind === "crossing" ? all - meetings(pattern2).sharedDensity : all;
}
function rowLengthPerArea(pattern2) {
  return courses(pattern2).reduce((sum5, course) => sum5 + course.rowLength, 0);
}
function meanRun(pattern2) {
  const all = courses(pattern2);
  return all.reduce((sum5, course) => sum5 + course.density * course.run, 0) / penetrationDensity(pattern2);
}

// packages/core/src/stitch/stitch-type.ts
var twoNeedle = { needle: 2, under: 0 };
var twoUnder = { needle: 0, under: 2 };
var noThread = { run: 0, depth: 0 };
var machine = ["iso-4915", "common-practice"];
var hand = ["common-practice"];
var table = {
  "101": {
    title: "single-thread chain stitch",
    number: "101",
    needle: { run: 3, depth: 2 },
    under: noThread,
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor: "needle side: bend over the surface; under side: loop held by the next loop of the same thread; unravels from its end",
    sources: machine
  },
  "301": {
    title: "lockstitch, balanced: threads lock at mid-thickness",
    number: "301",
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: twoNeedle,
    legsBelow: twoUnder,
    lockDepth: 0.5,
    anchor: "surface bend on each face and the lock inside the stack",
    sources: machine
  },
  "301-modified": {
    title: "modified lockstitch: lock pulled to the under face, needle thread through the whole thickness",
    number: "301",
    needle: { run: 1, depth: 2 },
    under: { run: 1, depth: 0 },
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor: "surface bend on the needle face, bobbin thread lying through the loop on the under face",
    sources: machine
  },
  "304": {
    title: "zigzag lockstitch, balanced",
    number: "304",
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: twoNeedle,
    legsBelow: twoUnder,
    lockDepth: 0.5,
    anchor: "surface bend on each face and the lock inside the stack",
    sources: machine
  },
  "401": {
    title: "double-thread chain stitch",
    number: "401",
    needle: { run: 1, depth: 2 },
    under: { run: 3, depth: 0 },
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor: "needle side: bend over the surface; under side: needle loop held by the looper thread",
    sources: machine
  },
  running: {
    title: "running stitch by hand, one thread passing down and up in turn",
    needle: { run: 1, depth: 1 },
    under: noThread,
    legsAbove: { needle: 1, under: 0 },
    legsBelow: { needle: 1, under: 0 },
    lockDepth: 1,
    anchor: "surface bend on both faces",
    sources: hand
  },
  saddle: {
    title: "saddle stitch by hand, two threads passing every hole from opposite sides",
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: { needle: 1, under: 1 },
    legsBelow: { needle: 1, under: 1 },
    lockDepth: 1,
    anchor: "surface bend on both faces, each face covered without gaps",
    sources: hand
  }
};
var stitchTypeIds = Object.keys(table);
var stitchTypes = stitchTypeIds.map((id) => ({ id, ...table[id] }));
function stitchType(id) {
  const key = String(id);
  const found = stitchTypes.find((type) => type.id === key);
  return found ?? fail({
    code: "not-a-choice",
    message: `stitch type ${key} is not known`,
    allowed: stitchTypeIds.join(", "),
    ...nearestHint(key, stitchTypeIds)
  });
}
function hasUnderThread(type) {
  return type.under.run > 0 || type.under.depth > 0;
}
function withStrands(type, strands) {
  if (!(Number.isInteger(strands) && strands >= 1)) {
    fail({
      code: "out-of-range",
      message: `strands = ${strands}, must be a whole number above 0`,
      allowed: "1, 2, 3 ..."
    });
  }
  const legs = ({ needle, under }) => ({ needle: needle * strands, under });
  return {
    ...type,
    needle: { run: type.needle.run * strands, depth: type.needle.depth * strands },
    legsAbove: legs(type.legsAbove),
    legsBelow: legs(type.legsBelow)
  };
}

// packages/core/src/stitch/thread.ts
var defaultPacking = 0.65;
var closestPacking2 = Math.PI / (2 * Math.sqrt(3));
function checkThread(thread) {
  const of = (what) => `${what} of thread ${thread.name}`;
  requirePositive(of("linearDensity"), thread.linearDensity, (t) => `${t * 1e6} tex`);
  requirePositive(of("density"), thread.density, (rho) => `${rho} kg/m^3`);
  if (thread.tenacity !== void 0) requirePositive(of("tenacity"), thread.tenacity, (s) => `${s / 1e6} N/tex`);
  if (thread.modulus !== void 0) requirePositive(of("modulus"), thread.modulus, (m) => `${m / 1e6} N/tex`);
  const packing = thread.packing ?? defaultPacking;
  if (!(packing > 0 && packing <= closestPacking2)) {
    fail({
      code: "out-of-range",
      message: `${of("packing")} = ${packing}, must be above 0 and at most ${closestPacking2.toFixed(3)}`,
      allowed: "above 0, at most 0.907 (hexagonal packing of round fibres); 0.55 to 0.75 is usual"
    });
  }
}
function fibreArea(thread) {
  checkThread(thread);
  return thread.linearDensity / thread.density;
}
function bundleArea(thread) {
  return fibreArea(thread) / (thread.packing ?? defaultPacking);
}
function threadDiameter(thread, legs = 1) {
  requirePositive("legs", legs);
  return Math.sqrt(4 * legs * bundleArea(thread) / Math.PI);
}

// packages/core/src/stitch/areal-fraction.ts
function underThreadOf(seam) {
  if (!hasUnderThread(seam.type) || seam.underThread !== void 0) {
    return { thread: seam.underThread ?? seam.needleThread, notes: [] };
  }
  const text3 = `second thread taken to be the needle thread (${seam.needleThread.name}), none given`;
  return { thread: seam.needleThread, notes: [{ level: "assumption", text: text3 }] };
}
function arealFraction(seam) {
  const N = penetrationDensity(seam.pattern);
  const under = underThreadOf(seam);
  const side2 = (legs) => ({
    legs,
    fibre: N * (legs.needle * fibreArea(seam.needleThread) + legs.under * fibreArea(under.thread)),
    bundle: N * (legs.needle * bundleArea(seam.needleThread) + legs.under * bundleArea(under.thread))
  });
  const above = side2(seam.type.legsAbove);
  const below = side2(seam.type.legsBelow);
  const fullest = Math.max(above.bundle, below.bundle);
  if (fullest >= 1) {
    fail({
      code: "out-of-range",
      message: `areal fraction of thread bundles = ${fullest.toPrecision(3)}, must be below 1`,
      allowed: "thread bundles that fill less than the whole area",
      hint: "a wider pitch or row spacing, or a finer thread"
    });
  }
  const notes4 = [...under.notes];
  if (above.fibre !== below.fibre) {
    const lesser2 = above.fibre < below.fibre ? "above" : "below";
    notes4.push({
      level: "assumption",
      text: `threads differ across the lock: areal fraction given for the side ${lesser2} the lock, which holds less fibre`
    });
  }
  const lesser = above.fibre <= below.fibre ? above : below;
  return {
    fibre: lesser.fibre,
    bundle: lesser.bundle,
    above,
    below,
    notes: uniqueNotes(notes4),
    sources: uniqueSources(seam.type.sources)
  };
}

// packages/core/src/stitch/priors.ts
import table2 from "@selvage/reference-data/stitch-priors.json" with { type: "json" };
var bridgingPriors = table2.bridging;
var rodPriors = table2.rod;
var zonePriors = table2.zone;
var specimenPriors = table2.specimen;
var inPlanePriors = table2.inPlane;
var testOverSteady = table2.testOverSteady;

// packages/core/src/stitch/sample-prior.ts
var z95 = 1.6448536269514722;
function samplePrior({ value, low, high, distribution }, random) {
  if (distribution === "lognormal") {
    const normal = Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    return value * Math.exp(Math.log(high / low) / (2 * z95) * normal);
  }
  const share2 = random();
  const width = high - low;
  return share2 * width < value - low ? low + Math.sqrt(share2 * width * (value - low)) : high - Math.sqrt((1 - share2) * width * (high - value));
}

// packages/core/src/stitch/bridging/bridging-parameters.ts
var bridgingParameterNames = Object.keys(bridgingPriors);
var yieldingParameterNames = [
  "bendRadius",
  "faceConfinement",
  "bendFriction",
  "floatGrip"
];
var shown2 = {
  frictionStress: (value) => `friction ${value / 1e6} MPa`,
  sewnEfficiency: (value) => `strength left after sewing ${value}`,
  anchorEfficiency: (value) => `strength left at an anchor ${value}`,
  tenacityFactor: (value) => `strength over tabled strength ${value}`,
  modulusFactor: (value) => `stiffness over tabled stiffness ${value}`,
  packing: (value) => `packing ${value}`,
  beddingIn: (value) => `bedding-in of surface bends ${value} diameters`,
  siteScatter: (value) => `scatter of a site ${value * 100} %`,
  bearingPressure: (value) => `bearing pressure ${value / 1e6} MPa`,
  bearingWidth: (value) => `bearing width ${value} of the bundle`,
  bendRadius: (value) => `radius of the bends as cured ${value} diameters`,
  faceConfinement: (value) => `bearing pressure of the face ${value} times that inside`,
  bendFriction: (value) => `friction around the bends ${value}`,
  floatGrip: (value) => `thread on the face held along ${value} of its perimeter`
};
var mayBeZero = [
  "frictionStress",
  "beddingIn",
  "siteScatter",
  "bendRadius",
  "bendFriction",
  "floatGrip"
];
var shares3 = ["sewnEfficiency", "anchorEfficiency", "packing", "floatGrip"];
function check(name, value) {
  if (mayBeZero.includes(name)) requireNotNegative(name, value);
  else requirePositive(name, value);
  if (shares3.includes(name) && value > 1) {
    fail({ code: "out-of-range", message: `${name} = ${value}, must not be above 1`, allowed: "above 0, at most 1" });
  }
}
function bridgingParameters(given = {}) {
  const all = {};
  for (const name of bridgingParameterNames) {
    const value = given[name] ?? bridgingPriors[name].value;
    check(name, value);
    all[name] = value;
  }
  return all;
}
function assumedParameters(names4, given = {}) {
  const assumed = names4.filter((name) => given[name] === void 0);
  if (assumed.length === 0) return [];
  const list = assumed.map((name) => shown2[name](bridgingPriors[name].value)).join(", ");
  return [
    {
      level: "assumption",
      text: `not measured, taken from the priors of stitching: ${list}`,
      source: "common-practice"
    }
  ];
}

// packages/core/src/stitch/bridging/rod.ts
var priors = {
  ...rodPriors,
  siteScatter: bridgingPriors.siteScatter,
  bearingPressure: bridgingPriors.bearingPressure,
  bearingWidth: bridgingPriors.bearingWidth
};
var parameterNames = Object.keys(priors);
var steepest = 45;
function sampleRod(input, random) {
  const drawn2 = {};
  for (const name of parameterNames) drawn2[name] = samplePrior(priors[name], random);
  return { ...input, parameters: { ...drawn2, ...input.parameters } };
}
function parametersOf(given = {}) {
  const all = {};
  for (const name of parameterNames) {
    const value = given[name] ?? priors[name].value;
    if (name === "snubbing" || name === "siteScatter") requireNotNegative(name, value);
    else requirePositive(name, value);
    all[name] = value;
  }
  return all;
}
function rodModel(input) {
  const { diameter: d, modulus, strength, embedded, lean = 0 } = input;
  requirePositive("diameter of the rod", d, inMillimetres);
  requirePositive("modulus of the rod", modulus, (E) => `${E / 1e9} GPa`);
  requirePositive("strength of the rod", strength, (sigma) => `${sigma / 1e6} MPa`);
  for (const h of embedded) requirePositive("embedded length of the rod", h, inMillimetres);
  if (!(lean >= 0 && lean <= steepest)) {
    fail({
      code: "out-of-range",
      message: `lean of the rod = ${lean} degrees, must lie in 0 to ${steepest}`,
      allowed: `0 to ${steepest} degrees`
    });
  }
  const parameters = parametersOf(input.parameters);
  const area = Math.PI * d * d / 4;
  const turned = Math.exp(parameters.snubbing * lean * Math.PI / 180);
  const side2 = (h) => ({
    depth: h / cosDegrees(lean),
    axialStiffness: turned * modulus * area,
    slipResistance: turned * Math.PI * d * parameters.frictionStress,
    lateralResistance: parameters.bearingPressure * parameters.bearingWidth * d,
    anchorStrength: 0,
    anchorCompliance: 0
  });
  return {
    model: {
      sides: [side2(embedded[0]), side2(embedded[1])],
      crackStrength: strength * area,
      siteScatter: parameters.siteScatter
    },
    notes: [
      {
        level: "assumption",
        text: "rod held by friction alone: the bond that breaks first raises the peak of a pull-out test, and the work by a few hundredths",
        source: "liu-2003"
      }
    ]
  };
}
function assumedRodParameters({ lean = 0, parameters = {} }) {
  const assumed = [
    ...parameters.frictionStress === void 0 ? [`friction ${priors.frictionStress.value / 1e6} MPa`] : [],
    ...parameters.snubbing === void 0 && lean > 0 ? [`friction at the mouth ${priors.snubbing.value}`] : []
  ];
  if (assumed.length === 0) return [];
  const text3 = `not measured, taken from the priors of rods: ${assumed.join(", ")}`;
  return [{ level: "assumption", text: text3, source: "common-practice" }];
}

// packages/core/src/stitch/bridging/assumptions.ts
var basic = [
  "frictionStress",
  "sewnEfficiency",
  "anchorEfficiency",
  "packing",
  "beddingIn",
  "siteScatter"
];
var sideways = ["bearingPressure", "bearingWidth"];
var yielding = [...basic.filter((name) => name !== "beddingIn"), ...sideways, ...yieldingParameterNames];
function furtherSources(input) {
  if ("kind" in input) return ["liu-2003", "jme-2011"];
  return input.bends === "yielding" ? ["hill-1950", "tan-2010"] : [];
}
function assumptions(input) {
  if ("kind" in input) return [...assumedRodParameters(input), ...input.path === void 0 ? [] : [rodAsString]];
  const given = givenParameters(input);
  if (input.bends === "yielding") return assumedParameters(yielding, given);
  return assumedParameters(input.path === void 0 ? basic : [...basic, ...sideways], given);
}
var rodAsString = {
  level: "warning",
  text: "rod taken as a string: its bending stiffness, and that it may break in bending, are left out as the crack slides"
};
function givenParameters({
  parameters = {},
  needleThread,
  underThread
}) {
  const own2 = needleThread.packing !== void 0 && (underThread === void 0 || underThread.packing !== void 0);
  return own2 ? { packing: needleThread.packing, ...parameters } : parameters;
}

// packages/core/src/stitch/bridging/bundle.ts
function needed(thread, name) {
  return thread[name] ?? fail({
    code: "missing-key",
    message: `${name} of thread ${thread.name} is not known`,
    hint: name === "modulus" ? "from a pull test: force per linear density over strain" : "breaking force over linear density"
  });
}
function bundleOf(legs, threads, parameters) {
  const strands = [
    { thread: threads.needle, legs: legs.needle },
    { thread: threads.under, legs: legs.under }
  ].filter((strand) => strand.legs > 0);
  let [count, axialStiffness, diameters, squares] = [0, 0, 0, 0];
  let breakingStrain2 = Number.POSITIVE_INFINITY;
  for (const { thread, legs: n } of strands) {
    const modulus = needed(thread, "modulus") * parameters.modulusFactor;
    const tenacity = needed(thread, "tenacity") * parameters.tenacityFactor;
    const d = threadDiameter(thread.packing === void 0 ? { ...thread, packing: parameters.packing } : thread);
    count += n;
    axialStiffness += n * thread.linearDensity * modulus;
    diameters += n * d;
    squares += n * d * d;
    breakingStrain2 = Math.min(breakingStrain2, tenacity / modulus);
  }
  const legDiameter = diameters / count;
  return {
    legs: count,
    axialStiffness,
    strength: axialStiffness * breakingStrain2,
    legDiameter,
    slipResistance: parameters.frictionStress * (Math.PI + 2 * (count - 1)) * legDiameter,
    lateralResistance: parameters.bearingPressure * parameters.bearingWidth * Math.sqrt(squares)
  };
}

// packages/core/src/stitch/bridging/yielding-bend.ts
var cutCorner = 2 - Math.PI / 2;
function yieldingBend(bundle, parameters, room, halfPitch) {
  const { legs, legDiameter: d, axialStiffness } = bundle;
  const resistance = parameters.bearingPressure * parameters.faceConfinement * parameters.bearingWidth * legs * d;
  const from = resistance * parameters.bendRadius * d;
  const bend = {
    from,
    to: Math.max(from, resistance * Math.min(room, halfPitch ?? room)),
    compliance: cutCorner / resistance,
    passed: Math.exp(-parameters.bendFriction * Math.PI / 2)
  };
  if (halfPitch === void 0) return bend;
  const slipResistance = parameters.frictionStress * parameters.floatGrip * Math.PI * legs * d;
  return { ...bend, float: { length: halfPitch, axialStiffness, slipResistance } };
}
function floatLimit({ passed, float }) {
  return float === void 0 ? 0 : float.slipResistance * float.length / passed;
}
function letGo(bend, force) {
  const { from, to, compliance, passed, float } = bend;
  const cut = compliance * (Math.min(Math.max(force, from), to) - from);
  if (float === void 0) return cut;
  const { length: L, axialStiffness: EA, slipResistance: q } = float;
  const S = passed * force;
  const held3 = q * L;
  if (S > held3) return cut + (S - held3 / 2) * L / EA;
  return S > 0 ? cut + S * S / (2 * EA * q) : cut;
}
function bendWork(bend, force) {
  const { from, to, compliance, passed, float } = bend;
  const S = Math.min(Math.max(force, from), to);
  const cut = compliance * (S - from) * (S + from) / 2;
  if (float === void 0) return cut;
  const { length: L, axialStiffness: EA, slipResistance: q } = float;
  const [drawn2, held3] = [passed * force, q * L];
  if (drawn2 > held3)
    return cut + (held3 * held3 * L / (3 * EA) + (drawn2 - held3) * (drawn2 + held3) * L / (2 * EA)) / passed;
  return drawn2 > 0 ? cut + drawn2 ** 3 / (3 * EA * q) / passed : cut;
}

// packages/core/src/stitch/bridging/bridging-model.ts
function sideOf(bundle, depth, end2, { parameters, bends, halfPitch }) {
  const anchorStrength = end2 === "none" ? 0 : parameters.anchorEfficiency * bundle.strength;
  const yields = end2 === "surface" && bends === "yielding";
  const rigid = end2 === "surface" && !yields;
  return {
    depth,
    axialStiffness: bundle.axialStiffness,
    slipResistance: bundle.slipResistance,
    lateralResistance: bundle.lateralResistance,
    anchorStrength,
    anchorCompliance: rigid ? parameters.beddingIn * bundle.legDiameter / anchorStrength : 0,
    ...yields && { bend: yieldingBend(bundle, parameters, depth, halfPitch) }
  };
}
function bridgingModel(input) {
  if ("kind" in input) return rodModel(input);
  const { type, thickness, needleThread } = input;
  requirePositive("thickness", thickness, inMillimetres);
  const crackDepth = input.crackDepth ?? thickness / 2;
  if (!(crackDepth > 0 && crackDepth < thickness)) {
    fail({
      code: "out-of-range",
      message: `crackDepth = ${inMillimetres(crackDepth)}, must lie inside the thickness of ${inMillimetres(thickness)}`,
      allowed: "above 0 and below the thickness"
    });
  }
  const parameters = bridgingParameters(input.parameters);
  const setting = settingOf(input, parameters);
  const threads = { needle: needleThread, under: input.underThread ?? needleThread };
  const [top, bottom] = [
    input.anchors?.needleFace ?? "surface",
    input.anchors?.underFace ?? "surface"
  ];
  const lock = type.lockDepth * thickness;
  const above = bundleOf(type.legsAbove, threads, parameters);
  const below = type.lockDepth < 1 ? bundleOf(type.legsBelow, threads, parameters) : above;
  const notes4 = hasUnderThread(type) && input.underThread === void 0 ? [
    {
      level: "assumption",
      text: `second thread taken to be the needle thread (${needleThread.name}), none given`
    }
  ] : [];
  if (input.bends === "yielding" && setting.halfPitch === void 0) {
    const text3 = "no pitch given: the thread on the face is taken not to give way behind the bends";
    notes4.push({ level: "assumption", text: text3 });
  }
  const toLock = lock - crackDepth;
  const rest = thickness - crackDepth;
  const model = (sides, crackStrength) => ({
    model: { sides, crackStrength, siteScatter: parameters.siteScatter },
    notes: notes4
  });
  if (type.lockDepth < 1 && Math.abs(toLock) < Math.max(above.legDiameter, below.legDiameter)) {
    notes4.push({ level: "assumption", text: "the lock lies in the plane of the crack: it is what breaks there" });
    return model(
      [sideOf(above, crackDepth, top, setting), sideOf(below, rest, bottom, setting)],
      parameters.anchorEfficiency * Math.min(above.strength, below.strength)
    );
  }
  const crossed3 = toLock > 0 ? above : below;
  const inside = type.lockDepth < 1;
  const upper = toLock > 0 ? [crackDepth, top] : [-toLock, "lock"];
  const lower = toLock > 0 && inside ? [toLock, "lock"] : [rest, bottom];
  return model(
    [sideOf(crossed3, ...upper, setting), sideOf(crossed3, ...lower, setting)],
    parameters.sewnEfficiency * crossed3.strength
  );
}
function settingOf({ bends, pitch, parameters: given }, parameters) {
  if (bends === "yielding" && given?.beddingIn !== void 0) {
    fail({
      code: "contradiction",
      message: `beddingIn = ${given.beddingIn} is given for bends that yield, which bed in by their own law`,
      hint: "leave out beddingIn, or take rigid bends"
    });
  }
  if (pitch !== void 0) requirePositive("pitch", pitch, inMillimetres);
  return { parameters, bends, halfPitch: pitch === void 0 ? void 0 : pitch / 2 };
}

// packages/core/src/stitch/bridging/check-model.ts
var mayBeZero2 = ["slipResistance", "anchorStrength", "anchorCompliance"];
var aboveZero = ["depth", "axialStiffness", "lateralResistance"];
function checkModel({ sides, crackStrength, siteScatter }) {
  for (const side2 of sides) {
    for (const name of mayBeZero2) requireNotNegative(name, side2[name]);
    for (const name of aboveZero) requirePositive(name, side2[name]);
    if (side2.bend !== void 0) checkBend(side2.bend);
  }
  requirePositive("crackStrength", crackStrength);
  requireNotNegative("siteScatter", siteScatter);
}
function checkBend({ from, to, compliance, passed, float }) {
  requireNotNegative("from of a bend", from);
  requireNotNegative("to of a bend beyond from", to - from);
  requireNotNegative("compliance of a bend", compliance);
  requirePositive("passed of a bend", passed);
  if (float === void 0) return;
  requirePositive("length of the float", float.length);
  requirePositive("axialStiffness of the float", float.axialStiffness);
  requireNotNegative("slipResistance of the float", float.slipResistance);
}

// packages/core/src/stitch/bridging/curve.ts
function areaUnder({ opening: opening2, force }) {
  let area = 0;
  for (let i = 1; i < opening2.length; i++) {
    area += ((force[i] ?? 0) + (force[i - 1] ?? 0)) * ((opening2[i] ?? 0) - (opening2[i - 1] ?? 0)) / 2;
  }
  return area;
}
function peakOf({ opening: opening2, force }) {
  let at4 = 0;
  for (let i = 1; i < force.length; i++) if ((force[i] ?? 0) > (force[at4] ?? 0)) at4 = i;
  return { force: force[at4] ?? 0, opening: opening2[at4] ?? 0 };
}

// packages/core/src/stitch/bridging/failure-sites.ts
function anchorLimit({ anchorStrength, slipResistance, depth }) {
  return anchorStrength + slipResistance * depth;
}
function givingWay({ sides, crackStrength, siteScatter }) {
  const limits2 = [anchorLimit(sides[0]), anchorLimit(sides[1])];
  const force = Math.min(crackStrength, ...limits2);
  const exponent = siteScatter > 0 ? siteScatter ** -1.086 : Number.POSITIVE_INFINITY;
  const weight = (limit5) => limit5 === force ? 1 : (force / limit5) ** exponent;
  const [crack, first2, second2] = [weight(crackStrength), weight(limits2[0]), weight(limits2[1])];
  const sum5 = crack + first2 + second2;
  const weaker = sides[limits2[0] <= limits2[1] ? 0 : 1];
  const atAnchor = weaker.anchorStrength > 0 ? "threadAtAnchor" : "threadPullOut";
  return {
    force,
    failure: crackStrength <= Math.min(...limits2) ? "threadAtCrack" : atAnchor,
    pullOut: [pulled(sides[0], first2 / sum5, force), pulled(sides[1], second2 / sum5, force)]
  };
}
function pulled({ slipResistance, depth }, share2, force) {
  return { share: share2, resistance: Math.min(slipResistance, force / depth) };
}
function pullOutForce({ sides }, { pullOut }, slip) {
  const [first2, second2] = pullOut;
  return first2.share * first2.resistance * Math.max(0, sides[0].depth - slip) + second2.share * second2.resistance * Math.max(0, sides[1].depth - slip);
}

// packages/core/src/stitch/bridging/slip.ts
function drawnOut(side2, force) {
  const { axialStiffness: EA, slipResistance: q, depth: h } = side2;
  const held3 = q * h;
  if (force <= held3) return force === 0 ? 0 : force * force / (2 * EA * q);
  const out = (force - held3 / 2) * (h / EA) + side2.anchorCompliance * (force - held3);
  return side2.bend === void 0 ? out : out + letGo(side2.bend, force - held3);
}
function stretchWork(side2, force) {
  const { axialStiffness: EA, slipResistance: q, depth: h } = side2;
  const held3 = q * h;
  if (force <= held3) return force === 0 ? 0 : force ** 3 / (3 * EA * q);
  const work2 = held3 * held3 * h / (3 * EA) + (force - held3) * (force + held3) * (h / EA + side2.anchorCompliance) / 2;
  if (side2.bend === void 0) return work2;
  return work2 + held3 * letGo(side2.bend, force - held3) + bendWork(side2.bend, force - held3);
}
function openingAt(model, force) {
  return drawnOut(model.sides[0], force) + drawnOut(model.sides[1], force);
}

// packages/core/src/stitch/bridging/opening-law.ts
var chords = 52;
var floatChords = 20;
function openingCurve(model, way = givingWay(model)) {
  const curve = { opening: [0], force: [0] };
  const { kinks, gripped, straightFrom } = kinksOf(model, way.force);
  let from = 0;
  for (const to of kinks) {
    if (to <= from) continue;
    rise(curve, model, from, to, to > straightFrom ? 1 : to > gripped ? floatChords : chords);
    from = to;
  }
  const broken = openingAt(model, way.force);
  for (const slip of slipsOf(model, way)) {
    curve.opening.push(broken + slip);
    curve.force.push(pullOutForce(model, way, slip));
  }
  return curve;
}
function kinksOf({ sides }, peak2) {
  const kinks = [peak2];
  let [gripped, straightFrom] = [0, 0];
  for (const { slipResistance, depth, bend } of sides) {
    const held3 = slipResistance * depth;
    let last = held3;
    if (bend !== void 0) {
      last += floatLimit(bend);
      kinks.push(held3 + bend.from, held3 + bend.to, last);
    }
    kinks.push(held3);
    gripped = Math.max(gripped, held3);
    straightFrom = Math.max(straightFrom, last);
  }
  return { kinks: kinks.filter((force) => force <= peak2).sort((a, b) => a - b), gripped, straightFrom };
}
function rise(curve, model, from, to, steps) {
  for (let i = 1; i <= steps; i++) {
    const level = i === steps ? to : from + (to - from) * i / steps;
    curve.opening.push(openingAt(model, level));
    curve.force.push(level);
  }
}
function slipsOf({ sides }, { pullOut }) {
  const first2 = pullOut[0].share > 0 ? sides[0].depth : 0;
  const second2 = pullOut[1].share > 0 ? sides[1].depth : 0;
  const [near5, far] = [Math.min(first2, second2), Math.max(first2, second2)];
  if (far === 0) return [0];
  return near5 === 0 || near5 === far ? [0, far] : [0, near5, far];
}
function openingWork(model, way = givingWay(model)) {
  let work2 = 0;
  for (const i of [0, 1]) {
    const side2 = model.sides[i];
    work2 += stretchWork(side2, way.force) + way.pullOut[i].share * way.pullOut[i].resistance * side2.depth ** 2 / 2;
  }
  return work2;
}

// packages/core/src/stitch/bridging/ploughing.ts
function bedOf({ sides }) {
  return 1 / sides[0].lateralResistance + 1 / sides[1].lateralResistance;
}
function lessSine(x) {
  return x < 1e-3 ? x ** 3 / 6 * (1 - x * x / 20) : x - Math.sin(x);
}
function deflected(bed, tension, opening2, sliding) {
  if (sliding === 0) return { angle: 0, drawn: opening2 };
  const reach3 = tension * bed;
  const inBed = sliding < reach3 ? 2 * Math.asin(Math.sqrt(sliding / (2 * reach3))) : Math.PI / 2;
  if (opening2 === 0) return { angle: inBed, drawn: reach3 * lessSine(inBed) + Math.max(0, sliding - reach3) };
  let angle2 = Math.min(inBed, Math.atan2(sliding, opening2));
  for (let round = 0; round < 60; round++) {
    const [sine, cosine] = [Math.sin(angle2), Math.cos(angle2)];
    const over2 = 2 * reach3 * Math.sin(angle2 / 2) ** 2 + opening2 * sine / cosine - sliding;
    const step4 = over2 / (reach3 * sine + opening2 / (cosine * cosine));
    angle2 -= step4;
    if (!(step4 > 1e-14 * angle2)) break;
  }
  return { angle: angle2, drawn: reach3 * lessSine(angle2) + opening2 / Math.cos(angle2) };
}

// packages/core/src/stitch/bridging/path-law.ts
var stateAt2 = (movement, tension, angle2) => ({
  ...movement,
  tension,
  angle: angle2,
  normal: tension * Math.cos(angle2),
  shear: tension * Math.sin(angle2)
});
var close = 1e-9;
function followPath(model, path, way = givingWay(model)) {
  const bed = bedOf(model);
  const limit5 = openingAt(model, way.force);
  const drawn2 = (S, { opening: opening2, sliding }) => deflected(bed, S, opening2, sliding).drawn;
  const excess2 = (to) => drawn2(way.force, to) - limit5;
  const state = (to, S) => stateAt2(to, S, deflected(bed, S, to.opening, to.sliding).angle);
  const whole2 = (to) => state(
    to,
    rootBetween((S) => openingAt(model, S) - drawn2(S, to), 0, way.force, close)
  );
  const most5 = pullOutForce(model, way, 0);
  const broken = (to, since) => {
    const slip = (S) => Math.max(0, drawn2(S, to) - drawn2(S, since));
    return state(
      to,
      rootBetween((S) => S - pullOutForce(model, way, slip(S)), 0, most5, close)
    );
  };
  let from = { opening: 0, sliding: 0 };
  let gaveWayAt;
  const states = [stateAt2(from, 0, 0)];
  for (const to of path) {
    if (gaveWayAt === void 0 && excess2(to) > 0) {
      const start = from;
      const between4 = (t) => ({
        opening: start.opening + t * (to.opening - start.opening),
        sliding: start.sliding + t * (to.sliding - start.sliding)
      });
      gaveWayAt = between4(rootBetween((t) => excess2(between4(t)), 0, 1));
      states.push(state(gaveWayAt, way.force), broken(gaveWayAt, gaveWayAt));
    }
    states.push(gaveWayAt === void 0 ? whole2(to) : broken(to, gaveWayAt));
    from = to;
  }
  return states;
}
var points3 = 50;
function straightPath(model, degrees, way = givingWay(model)) {
  const { cos: c, sin: s } = sinCosDegrees(degrees);
  const bed = bedOf(model);
  const limit5 = openingAt(model, way.force);
  const along2 = (length2) => ({ opening: length2 * c, sliding: length2 * s });
  const excess2 = (length2) => deflected(bed, way.force, length2 * c, length2 * s).drawn - limit5;
  let far = limit5;
  while (excess2(far) < 0) far *= 2;
  const atBreak = rootBetween(excess2, 0, far);
  const slip = Math.max(...[0, 1].map((i) => way.pullOut[i].share > 0 ? model.sides[i].depth : 0));
  const end2 = Math.max(atBreak + slip, atBreak * (1 + 1e-9));
  return [
    ...Array.from({ length: points3 - 1 }, (_, i) => along2(atBreak * ((i + 1) / points3) ** 2)),
    ...Array.from({ length: points3 }, (_, i) => along2(atBreak + (end2 - atBreak) * (i + 1) / points3))
  ];
}
function curveAlong(states) {
  const opening2 = [0];
  const force = [0];
  let length2 = 0;
  let last = states[0];
  for (const state of states.slice(1)) {
    if (last === void 0) break;
    const [dw, du] = [state.opening - last.opening, state.sliding - last.sliding];
    const step4 = Math.hypot(dw, du);
    if (step4 > 0) {
      const along2 = ({ normal, shear: shear2 }) => (normal * dw + shear2 * du) / step4;
      const before2 = along2(last);
      if (before2 !== force.at(-1)) {
        opening2.push(length2);
        force.push(before2);
      }
      length2 += step4;
      opening2.push(length2);
      force.push(along2(state));
    }
    last = state;
  }
  return { opening: opening2, force };
}

// packages/core/src/stitch/bridging/bridging-law.ts
var openingSources = ["jain-mai-1994", "tong-mouritz-bannister-2002", "common-practice"];
var slidingSources = [...openingSources, "cox-1999", "massabo-cox-1999"];
function bridgingLaw(input) {
  const { model, notes: notes4 } = bridgingModel(input);
  const law = lawOf(model, input.path, [...notes4, ...assumptions(input)]);
  const more = furtherSources(input);
  return more.length === 0 ? law : { ...law, sources: uniqueSources(law.sources, more) };
}
function lawOf(model, path, notes4 = []) {
  checkModel(model);
  const way = givingWay(model);
  if (!(way.force > 0)) {
    fail({
      code: "out-of-range",
      message: "friction = 0 for a thread without anchor, which holds nothing",
      allowed: "friction above 0, or an anchor at the end of each leg"
    });
  }
  if (path === void 0) {
    const curve2 = openingCurve(model, way);
    const { force } = way;
    const at4 = curve2.opening[curve2.force.indexOf(force)] ?? 0;
    return {
      opening: curve2.opening,
      force: curve2.force,
      peak: { force, opening: at4 },
      work: areaUnder(curve2),
      failure: way.failure,
      notes: uniqueNotes(notes4),
      sources: openingSources
    };
  }
  const states = followPath(model, movements(model, path, way), way);
  const curve = curveAlong(states);
  return {
    ...curve,
    peak: peakOf(curve),
    work: areaUnder(curve),
    failure: way.failure,
    states,
    notes: uniqueNotes([...notes4, ...pathNotes(model, states, way)]),
    sources: slidingSources
  };
}
function movements(model, path, way) {
  if ("angle" in path) {
    if (!(path.angle >= 0 && path.angle <= 90)) {
      fail({
        code: "out-of-range",
        message: `angle = ${path.angle} degrees, must lie in 0 to 90`,
        allowed: "0 (opening) to 90 (sliding) degrees"
      });
    }
    return straightPath(model, path.angle, way);
  }
  let last = { opening: 0, sliding: 0 };
  for (const next of path.history) {
    for (const name of ["opening", "sliding"]) {
      if (!(Number.isFinite(next[name]) && next[name] >= last[name])) {
        fail({
          code: "out-of-range",
          message: `${name} = ${next[name]} m in the history comes after ${last[name]} m, must not fall`,
          allowed: "finite values from 0 on that never fall; unloading is not covered"
        });
      }
    }
    last = next;
  }
  if (last.opening === 0 && last.sliding === 0) {
    fail({ code: "out-of-range", message: "history without movement", allowed: "at least one movement above 0" });
  }
  return path.history;
}
function pathNotes({ sides }, states, way) {
  const notes4 = [];
  const breaks = states.findIndex(({ tension }) => tension >= way.force);
  const whole2 = breaks < 0 ? states : states.slice(0, breaks + 1);
  const deep2 = whole2.some(
    ({ tension, angle: angle2 }) => sides.some((side2) => tension / side2.lateralResistance * Math.sin(angle2) > side2.depth)
  );
  if (deep2) {
    const text3 = "before it gives way the thread bends over more than its depth: outside the range of the bed model in sliding";
    notes4.push({ level: "warning", text: text3, source: "cox-1999" });
  }
  if ((states.at(-1)?.tension ?? 0) > 1e-6 * way.force) {
    notes4.push({ level: "assumption", text: "the path ends while the thread still holds: work up to there" });
  }
  return notes4;
}

// packages/core/src/stitch/bridging/bridging-interval.ts
function intervalOf(values) {
  const sorted = Float64Array.from(values).sort();
  return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) };
}
function startSampling({ samples = 1e3, seed = 1 }) {
  if (!(Number.isInteger(samples) && samples >= 10 && samples <= 1e5)) {
    fail({
      code: "out-of-range",
      message: `samples = ${samples}, must be whole, 10 to 100000`,
      allowed: "10 to 100000"
    });
  }
  if (!Number.isSafeInteger(seed)) {
    fail({ code: "out-of-range", message: `seed = ${seed}, must be a whole number`, allowed: "a whole number" });
  }
  return { samples, random: uniformRandom(seed) };
}
var drawnNames = {
  rigid: bridgingParameterNames.filter((name) => !yieldingParameterNames.includes(name)),
  yielding: bridgingParameterNames.filter((name) => name !== "beddingIn")
};
function sampleThread(input, random) {
  const parameters = {};
  for (const name of drawnNames[input.bends ?? "rigid"]) parameters[name] = samplePrior(bridgingPriors[name], random);
  return { ...input, parameters: { ...parameters, ...input.parameters } };
}
function sampleBridging(input, random) {
  const { model } = bridgingModel("kind" in input ? sampleRod(input, random) : sampleThread(input, random));
  if (input.path !== void 0) {
    const { peak: peak2, work: work2, failure: failure2 } = lawOf(model, input.path);
    return { peak: peak2.force, opening: peak2.opening, work: work2, failure: failure2 };
  }
  const way = givingWay(model);
  return {
    peak: way.force,
    opening: openingAt(model, way.force),
    work: openingWork(model, way),
    failure: way.failure
  };
}
function bridgingInterval(input, options = {}) {
  const { model, notes: notes4 } = bridgingModel(input);
  const nominal = lawOf(model, input.path, notes4);
  const { samples, random } = startSampling(options);
  const drawn2 = Array.from({ length: samples }, () => sampleBridging(input, random));
  const share2 = (failure2) => drawn2.filter((sample) => sample.failure === failure2).length / samples;
  return {
    peak: intervalOf(drawn2.map((sample) => sample.peak)),
    opening: intervalOf(drawn2.map((sample) => sample.opening)),
    work: intervalOf(drawn2.map((sample) => sample.work)),
    failures: {
      threadAtCrack: share2("threadAtCrack"),
      threadAtAnchor: share2("threadAtAnchor"),
      threadPullOut: share2("threadPullOut")
    },
    notes: uniqueNotes([
      ...nominal.notes,
      {
        level: "assumption",
        text: `range of nine in ten of ${samples} samples of the parameters not given, by the priors of stitching`,
        source: "common-practice"
      }
    ]),
    sources: uniqueSources(nominal.sources, furtherSources(input))
  };
}

// packages/core/src/stitch/bridging/measured-interval.ts
var z952 = 1.6448536269514722;
function variationOf({ low, high }) {
  return Math.sqrt(Math.expm1((Math.log(high / low) / (2 * z952)) ** 2));
}
var usualVariation = variationOf(specimenPriors.measuredFactor);
var scaledLaw = (law, factor) => ({
  ...law,
  force: law.force.map((force) => force * factor),
  peak: { ...law.peak, force: law.peak.force * factor },
  work: law.work * factor
});
function measuredInterval(law, variation = usualVariation) {
  if (!(variation >= 0 && variation <= 1)) {
    fail({
      code: "out-of-range",
      message: `variation = ${variation} of a measured law, must lie in 0 to 1`,
      allowed: "0 to 1: standard deviation over mean of the repeats"
    });
  }
  const factor = Math.exp(z952 * Math.sqrt(Math.log1p(variation * variation)));
  const around = (median) => ({ median, low: median / factor, high: median * factor });
  const { force, opening: opening2 } = law.peak;
  const share2 = (failure2) => law.failure === failure2 ? 1 : 0;
  const percent5 = Number((100 * variation).toPrecision(3));
  const text3 = `range of nine in ten stitches from the scatter of the measured curves, ${percent5} %`;
  return {
    peak: around(force),
    opening: { median: opening2, low: opening2, high: opening2 },
    work: around(law.work),
    failures: {
      threadAtCrack: share2("threadAtCrack"),
      threadAtAnchor: share2("threadAtAnchor"),
      threadPullOut: share2("threadPullOut")
    },
    notes: [...law.notes, { level: "assumption", text: text3 }],
    sources: law.sources
  };
}

// packages/core/src/stitch/bridging/measured-law.ts
var nearZero = 0.05;
function measuredBridgingLaw(points4, failure2, options = {}) {
  const bad = (message, allowed) => fail({ code: "out-of-range", message, allowed });
  if (points4.length < 2) bad(`${points4.length} points of a measured curve`, "two points or more");
  let last = 0;
  for (const [i, { opening: opening2, force }] of points4.entries()) {
    requireNotNegative(`opening of point ${i + 1}`, opening2, (w) => `${w * 1e3} mm`);
    requireNotNegative(`force of point ${i + 1}`, force, (F) => `${F} N`);
    if (i === 0 && opening2 !== 0) {
      bad(
        `opening of the first point = ${inMillimetres(opening2)}, must be 0`,
        "a curve that starts where the crack is closed"
      );
    }
    if (opening2 < last) {
      const before2 = inMillimetres(last);
      bad(
        `opening of point ${i + 1} = ${inMillimetres(opening2)} comes after ${before2}, must not fall`,
        "rising openings"
      );
    }
    last = opening2;
  }
  const curve = { opening: points4.map((point) => point.opening), force: points4.map((point) => point.force) };
  const peak2 = peakOf(curve);
  if (!(peak2.force > 0 && last > 0))
    bad("measured curve without force or without opening", "a force above 0 over an opening above 0");
  const end2 = curve.force.at(-1) ?? 0;
  const holds = end2 > nearZero * peak2.force;
  if (holds && options.cutOff !== true) {
    const percent5 = Number((100 * end2 / peak2.force).toPrecision(3));
    fail({
      code: "out-of-range",
      message: `force of the last point is ${percent5} % of the peak, must be at or near 0`,
      allowed: `at most ${nearZero * 100} % of the peak, or a curve said to be cut off`,
      hint: "measure until the stitch holds nothing, or say that the curve was cut off"
    });
  }
  const notes4 = [{ level: "assumption", text: "law of the stitch as measured, not computed" }];
  if (holds) {
    const text3 = `the measured curve ends at ${inMillimetres(last)} while the stitch still holds: its work is a lower bound`;
    notes4.push({ level: "warning", text: text3 });
  }
  return { ...curve, peak: peak2, work: areaUnder(curve), failure: failure2, measured: true, notes: notes4, sources: [] };
}

// packages/core/src/stitch/positions.ts
var mostHoles = 2e6;
var border = 1e-9;
var straightCell = (pitch, rowSpacing) => ({
  a: pitch,
  b: rowSpacing,
  holes: [{ x: 0, y: 0, row: 0 }],
  rows: 1
});
function holeSets(pattern2) {
  const { pitch: p2, rowSpacing: s } = pattern2;
  const asIs = { cos: 1, sin: 0, x: 0, y: 0 };
  switch (pattern2.kind) {
    case "parallel":
      return [{ cell: straightCell(p2, s), ...asIs }];
    case "staggered": {
      const holes2 = [
        { x: 0, y: 0, row: 0 },
        { x: (pattern2.shift ?? 0.5) * p2, y: s, row: 1 }
      ];
      return [{ cell: { a: p2, b: 2 * s, holes: holes2, rows: 2 }, ...asIs }];
    }
    case "zigzag": {
      const half = pattern2.swing / 2;
      const holes2 = [
        { x: 0, y: -half, row: 0 },
        { x: p2, y: half, row: 0 }
      ];
      return [{ cell: { a: 2 * p2, b: s, holes: holes2, rows: 1 }, ...asIs }];
    }
    case "crossing": {
      const second2 = straightCell(pattern2.second.pitch, pattern2.second.rowSpacing);
      const angle2 = pattern2.angle ?? 90;
      const place = { x: pattern2.offset?.x ?? 0, y: pattern2.offset?.y ?? 0 };
      return [
        { cell: straightCell(p2, s), ...asIs },
        { cell: second2, cos: cosDegrees(angle2), sin: sinDegrees(angle2), ...place }
      ];
    }
  }
}
function reach({ cell, cos, sin, x, y }, field) {
  const corners = [0, field.length].flatMap(
    (dx) => [0, field.width].map((dy) => ({ x: field.x + dx - x, y: field.y + dy - y }))
  );
  const along2 = corners.map((corner) => (cos * corner.x + sin * corner.y) / cell.a);
  const across2 = corners.map((corner) => (-sin * corner.x + cos * corner.y) / cell.b);
  return {
    i: [Math.floor(Math.min(...along2)) - 1, Math.ceil(Math.max(...along2)) + 1],
    j: [Math.floor(Math.min(...across2)) - 2, Math.ceil(Math.max(...across2)) + 2]
  };
}
function inSet(holeSet, set, field) {
  const { cell, cos, sin } = holeSet;
  const slack = border * Math.min(cell.a, cell.b);
  const inside = (value, size4) => value >= -slack && value < size4 - slack;
  const { i, j } = reach(holeSet, field);
  const found = [];
  for (let m = j[0]; m <= j[1]; m++) {
    for (const hole of cell.holes) {
      for (let k = i[0]; k <= i[1]; k++) {
        const along2 = k * cell.a + hole.x;
        const across2 = m * cell.b + hole.y;
        const x = holeSet.x + cos * along2 - sin * across2;
        const y = holeSet.y + sin * along2 + cos * across2;
        if (inside(x - field.x, field.length) && inside(y - field.y, field.width)) {
          found.push({ x, y, row: m * cell.rows + hole.row, set });
        }
      }
    }
  }
  return found;
}
function penetrations(pattern2, field) {
  checkPattern(pattern2);
  if (pattern2.kind === "rows") return rowPenetrations(pattern2);
  const { length: length2, width, x = 0, y = 0 } = field ?? { length: 0, width: 0 };
  requirePositive("field length", length2, inMillimetres);
  requirePositive("field width", width, inMillimetres);
  const expected = penetrationDensity(pattern2) * length2 * width;
  if (expected > mostHoles) {
    fail({
      code: "out-of-range",
      message: `field of ${inMillimetres(length2)} x ${inMillimetres(width)} holds about ${Math.round(expected)} holes, must be at most ${mostHoles}`,
      allowed: `at most ${mostHoles} holes`,
      hint: "the density needs no field"
    });
  }
  const rectangle = { length: length2, width, x, y };
  return holeSets(pattern2).flatMap((holeSet, set) => {
    const found = inSet(holeSet, set === 0 ? 0 : 1, rectangle);
    return pattern2.kind === "zigzag" ? found.sort((a, b) => a.row - b.row || a.x - b.x) : found;
  });
}
function rowPenetrations(pattern2) {
  return pattern2.rows.flatMap((row, index) => {
    const { penetrations: penetrations2, pitch, start } = closeRow(row);
    return Array.from({ length: penetrations2 }, (_, k) => {
      return { x: start + k * pitch, y: row.offset, row: index, set: 0 };
    });
  });
}
function countInField(pattern2, field) {
  const all = penetrations(pattern2, field);
  const sets = (pattern2.kind === "crossing" ? [0, 1] : [0]).map((set) => {
    const own2 = all.filter((hole) => hole.set === set);
    return { penetrations: own2.length, rows: new Set(own2.map((hole) => hole.row)).size };
  });
  return { penetrations: all.length, holes: pattern2.kind === "crossing" ? distinct(all, pattern2) : all.length, sets };
}
function distinct(all, pattern2) {
  const { pitch: p2, rowSpacing: s } = pattern2;
  const sameHole = 1e-6 * Math.min(p2, s, pattern2.second.pitch, pattern2.second.rowSpacing);
  const offGrid = (value, step4) => value - Math.round(value / step4) * step4;
  const shared = all.filter(({ set, x, y }) => set === 1 && Math.hypot(offGrid(x, p2), offGrid(y, s)) <= sameHole);
  return all.length - shared.length;
}

// packages/core/src/stitch/sewn-rows.ts
function sewnRows(pattern2, field) {
  if (pattern2.kind === "rows") {
    return pattern2.rows.map((row) => {
      const { stitches, pitch, penetrations: penetrations2 } = closeRow(row);
      return { rows: 1, stitches, penetrations: penetrations2, pitch, run: pitch, length: row.length };
    });
  }
  if (field === void 0) return void 0;
  const { sets } = countInField(pattern2, field);
  return courses(pattern2).map(({ pitch, run: run2 }, index) => {
    const { penetrations: penetrations2, rows } = sets[index] ?? { penetrations: 0, rows: 0 };
    return { rows, stitches: penetrations2, penetrations: penetrations2, pitch, run: run2, length: penetrations2 * pitch };
  });
}

// packages/core/src/stitch/consumption.ts
function threadConsumption(input) {
  const { pattern: pattern2, type, needleThread, dryThickness: dryThickness2, waste = 0, tails = 0 } = input;
  requirePositive("dryThickness", dryThickness2, inMillimetres);
  requireNotNegative("waste", waste);
  requireNotNegative("tails", tails, inMillimetres);
  const under = underThreadOf(input);
  const N = penetrationDensity(pattern2);
  const surface = perThread((thread) => type[thread].run * meanRun(pattern2));
  const through = perThread((thread) => type[thread].depth * dryThickness2);
  const perStitch = perThread((thread) => surface[thread] + through[thread]);
  const perArea = scaled2(perStitch, N);
  const massOf3 = (length2) => perThread((thread) => length2[thread] * (thread === "needle" ? needleThread : under.thread).linearDensity);
  const layer = (length2) => perThread((thread) => length2[thread] * bundleArea(thread === "needle" ? needleThread : under.thread)).total;
  const surfacePerArea = scaled2(surface, N);
  const throughPerArea = scaled2(through, N);
  const massPerArea = massOf3(perArea);
  const perRowLength = scaled2(perArea, 1 / rowLengthPerArea(pattern2));
  const rows = sewnRows(pattern2, input.field);
  const amounts = rows && totals(rows, input, massOf3);
  return {
    perStitch,
    perRowLength,
    perArea,
    surfacePerArea,
    throughPerArea,
    massPerRowLength: massOf3(perRowLength),
    massPerArea,
    addedArealMass: massPerArea.total,
    addedThickness: {
      surface: layer(surfacePerArea),
      through: layer(throughPerArea),
      total: layer(perArea)
    },
    ...amounts && { totals: amounts },
    notes: uniqueNotes([...under.notes, ...notesOn2(input)]),
    sources: uniqueSources(type.sources)
  };
}
function perThread(amount2) {
  const [needle, under] = [amount2("needle"), amount2("under")];
  return { needle, under, total: needle + under };
}
var scaled2 = (amounts, factor) => perThread((thread) => amounts[thread] * factor);
function totals(rows, { type, dryThickness: dryThickness2, waste = 0, tails = 0 }, massOf3) {
  const ofRow = (row, share2) => row.stitches * (share2.run * row.run + share2.depth * dryThickness2);
  const withThread = rows.map((row) => ({ ...row, thread: perThread((thread) => ofRow(row, type[thread])) }));
  const sum5 = (amount2) => withThread.reduce((total3, row) => total3 + amount2(row), 0);
  const sewn = perThread((thread) => sum5((row) => row.thread[thread]));
  const ends2 = 2 * sum5((row) => row.rows);
  const inUse = { needle: 1, under: hasUnderThread(type) ? 1 : 0 };
  const needed4 = perThread((thread) => (sewn[thread] + ends2 * tails * inUse[thread]) * (1 + waste));
  return {
    stitches: sum5((row) => row.stitches),
    penetrations: sum5((row) => row.penetrations),
    rows: withThread,
    rowLength: sum5((row) => row.length),
    sewn,
    sewnMass: massOf3(sewn),
    needed: needed4,
    neededMass: massOf3(needed4)
  };
}
function notesOn2({ pattern: pattern2, type, waste }) {
  const notes4 = [
    {
      level: "assumption",
      text: "thread length is that of straight, taut paths over an uncompressed dry stack; tension and compression of the stack change it"
    }
  ];
  if (waste === void 0) {
    notes4.push({
      level: "assumption",
      text: "no waste allowance given: thread needed is thread sewn; 10 to 15 % is common practice, no source"
    });
  }
  if (type.id === "304" && pattern2.kind !== "zigzag") {
    notes4.push({
      level: "warning",
      text: `stitch type 304 sews a zigzag, the pattern is ${pattern2.kind} and has no swing: counted as straight stitches`
    });
  }
  return notes4;
}

// packages/core/src/stitch/holes.ts
import needles2 from "@selvage/reference-data/needles.json" with { type: "json" };

// packages/core/src/stitch/nearest-neighbour.ts
function nearestNeighbour(pattern2) {
  checkPattern(pattern2);
  if (pattern2.kind === "rows") return nearestInRows(pattern2);
  const { pitch: p2, rowSpacing: s } = pattern2;
  switch (pattern2.kind) {
    case "parallel":
      return withNearest(p2, s);
    case "staggered": {
      const shift = pattern2.shift ?? 0.5;
      return withNearest(p2, Math.min(Math.hypot(s, Math.min(shift, 1 - shift) * p2), 2 * s));
    }
    case "zigzag": {
      const v = pattern2.swing;
      const facing = Math.min(...neighbouringLines(v, s).map((k) => Math.hypot(p2, k * s - v)));
      return withNearest(Math.min(Math.hypot(p2, v), 2 * p2), Math.min(s, facing));
    }
    case "crossing": {
      const own2 = Math.min(p2, pattern2.second.pitch);
      const parallelRows = Math.min(s, pattern2.second.rowSpacing);
      return withNearest(own2, Math.min(parallelRows, meetings(pattern2).closest));
    }
  }
}
var withNearest = (sameRow, otherRow) => ({
  distance: Math.min(sameRow, otherRow),
  sameRow,
  otherRow
});
function neighbouringLines(swing, rowSpacing) {
  const nearest2 = Math.floor(swing / rowSpacing);
  return [nearest2, nearest2 + 1].filter((k) => k > 0);
}
function nearestInRows(pattern2) {
  const pitches = pattern2.rows.map((row) => closeRow(row).pitch);
  const sameRow = Math.min(...pitches);
  let otherRow = Number.POSITIVE_INFINITY;
  pattern2.rows.forEach((row, i) => {
    for (const other of pattern2.rows.slice(i + 1)) {
      otherRow = Math.min(otherRow, Math.hypot(other.offset - row.offset, leastShift(row, other)));
    }
  });
  return Number.isFinite(otherRow) ? withNearest(sameRow, otherRow) : { distance: sameRow, sameRow };
}
function leastShift(row, other) {
  if (row.pitch !== other.pitch) return 0;
  const shift = Math.abs((row.stagger ?? 0) - (other.stagger ?? 0));
  return Math.min(shift, row.pitch - shift);
}

// packages/core/src/stitch/needle.ts
import needles from "@selvage/reference-data/needles.json" with { type: "json" };
var sizes = [
  needles["thread-15-25-tex"],
  needles["thread-30-45-tex"],
  needles["thread-60-90-tex"],
  needles["thread-130-180-tex"]
].map(({ values }) => ({ tex: values.linearDensity, number: values.needleNumber }));
function needleFor(thread) {
  checkThread(thread);
  const tex = thread.linearDensity * 1e6;
  const slack = 1e-9 * tex;
  const sources = ["common-practice"];
  const finer = sizes.findLast((size4) => size4.tex.low <= tex + slack);
  const coarser = sizes.find((size4) => size4.tex.high >= tex - slack);
  if (finer !== void 0 && coarser !== void 0) {
    const within4 = finer === coarser;
    return {
      from: within4 ? finer.number.low : finer.number.high,
      to: within4 ? finer.number.high : coarser.number.low,
      notes: [],
      sources
    };
  }
  const nearest2 = finer ?? coarser ?? sizes[0];
  const [least2, most5] = [sizes[0]?.tex.low, sizes.at(-1)?.tex.high];
  return {
    from: nearest2?.number.low ?? 0,
    to: nearest2?.number.high ?? 0,
    notes: [
      {
        level: "warning",
        text: `thread of ${Number(tex.toPrecision(4))} tex lies outside the needle table, ${least2} to ${most5} tex: needle of the nearest size named (common practice, no source)`,
        source: "common-practice"
      }
    ],
    sources
  };
}
function needleDiameter(number7) {
  requirePositive("needle number", number7);
  return number7 * 1e-5;
}
function needleRatio(number7, thread) {
  return needleDiameter(number7) / (2 * threadDiameter(thread));
}

// packages/core/src/stitch/rows-met.ts
function rowsMetAcross(pattern2) {
  checkPattern(pattern2);
  const N = penetrationDensity(pattern2);
  if (pattern2.kind === "rows") {
    const offsets = pattern2.rows.map((row) => row.offset);
    const gaps = offsets.slice(1).map((offset, i) => offset - (offsets[i] ?? 0));
    return gaps.length === 0 ? void 0 : fromGaps(gaps, N, true);
  }
  const s = pattern2.rowSpacing;
  switch (pattern2.kind) {
    case "parallel":
    case "staggered":
      return union([{ period: s, phase: 0 }], N);
    case "zigzag":
      return union(
        [-1, 1].map((side2) => ({ period: s, phase: side2 * pattern2.swing / 2 })),
        N
      );
    case "crossing":
      return crossed2(pattern2.angle, s, pattern2.second.pitch, pattern2.offset?.y ?? 0, N);
  }
}
function rowsMetAlong(pattern2) {
  checkPattern(pattern2);
  const N = penetrationDensity(pattern2);
  if (pattern2.kind === "rows") {
    return union(
      pattern2.rows.map((row) => ({ period: row.pitch, phase: row.stagger ?? 0 })),
      N
    );
  }
  const p2 = pattern2.pitch;
  switch (pattern2.kind) {
    case "parallel":
    case "zigzag":
      return union([{ period: p2, phase: 0 }], N);
    case "staggered":
      return union(
        [0, pattern2.shift ?? 0.5].map((share2) => ({ period: p2, phase: share2 * p2 })),
        N
      );
    case "crossing":
      return crossed2(pattern2.angle, p2, pattern2.second.rowSpacing, pattern2.offset?.x ?? 0, N);
  }
}
function crossed2(angle2, first2, second2, phase, N) {
  const own2 = { period: first2, phase: 0 };
  if ((angle2 ?? 90) === 90) return union([own2, { period: second2, phase }], N);
  return { ...union([own2], N), repeats: false };
}
var longestRepeat2 = 200;
function union(families, N) {
  const period = commonPeriod(families.map((family) => family.period));
  if (period === void 0) {
    const spacing2 = 1 / families.reduce((sum5, family) => sum5 + 1 / family.period, 0);
    const widest = Math.min(...families.map((family) => family.period));
    return { spacing: spacing2, narrowest: 0, widest, perFrontLength: N * spacing2, repeats: false };
  }
  const places = families.flatMap((family) => {
    const count = Math.round(period / family.period);
    return Array.from({ length: count }, (_, k) => family.phase + k * family.period);
  }).map((place) => place - Math.floor(place / period) * period).sort((a, b) => a - b);
  const first2 = places[0] ?? 0;
  const gaps = places.map((place, i) => (places[i + 1] ?? first2 + period) - place);
  return fromGaps(
    gaps.filter((gap) => gap > 1e-9 * period),
    N,
    true
  );
}
function fromGaps(gaps, N, repeats) {
  const spacing2 = gaps.reduce((sum5, gap) => sum5 + gap, 0) / gaps.length;
  return {
    spacing: spacing2,
    narrowest: Math.min(...gaps),
    widest: Math.max(...gaps),
    perFrontLength: N * spacing2,
    repeats
  };
}
function commonPeriod(periods) {
  const unit2 = periods[0] ?? 0;
  let multiple = 1;
  for (const period of periods) {
    const ratio = asRatio(period / unit2, longestRepeat2);
    if (ratio === void 0) return void 0;
    multiple = commonMultiple(multiple, ratio.numerator);
    if (multiple > longestRepeat2) return void 0;
  }
  return unit2 * multiple;
}

// packages/core/src/stitch/holes.ts
var least = needles2["practical-lower-bounds"].values;
var most = needles2["practical-upper-bounds"].values;
var usualRatio = { low: 1.6, high: 2.2 };
var holeOverBundle = 1.25;
function holes(input) {
  const { pattern: pattern2, needleNumber } = input;
  const { width, notes: notes4 } = holeWidth(input);
  const pitch = Math.min(...courses(pattern2).map((course) => course.pitch));
  const apart2 = pattern2.kind === "zigzag" && pattern2.swing >= width ? 2 : 1;
  const needle = needleNumber === void 0 ? [] : needleNotes(needleNumber, input);
  return {
    width,
    netWidth: Math.max(0, 1 - width / (apart2 * pitch)),
    notes: [...notes4, ...needle, ...spacingNotes(pattern2, width), ...upperNotes(input)]
  };
}
function holeWidth({ needleThread, type, needleNumber, holeWidth: holeWidth2 }) {
  if (holeWidth2 !== void 0) {
    requirePositive("holeWidth", holeWidth2, inMillimetres);
    return { width: holeWidth2, notes: [] };
  }
  if (needleNumber !== void 0) {
    const text4 = "hole taken as wide as the needle, no width given";
    return { width: needleDiameter(needleNumber), notes: [{ level: "assumption", text: text4 }] };
  }
  const bundle = Math.sqrt(4 * type.legsAbove.needle * bundleArea(needleThread) / Math.PI);
  const text3 = `hole taken ${holeOverBundle} times as wide as the thread in it, no width and no needle given`;
  return { width: holeOverBundle * bundle, notes: [{ level: "assumption", text: text3, source: "common-practice" }] };
}
var practice = (text3) => ({
  level: "warning",
  text: `${text3} (common practice, no source)`,
  source: "common-practice"
});
function needleNotes(needleNumber, { pattern: pattern2, needleThread }) {
  const notes4 = [];
  const diameter = needleDiameter(needleNumber);
  const run2 = Math.min(...courses(pattern2).map((course) => course.run));
  const factor = least.pitchOverNeedleDiameter.value;
  if (run2 < factor * diameter) {
    const limit5 = inMillimetres(factor * diameter);
    notes4.push(
      practice(
        `holes ${inMillimetres(run2)} apart along the row, at least ${factor} needle diameters = ${limit5} are usual`
      )
    );
  }
  const ratio = needleRatio(needleNumber, needleThread);
  if (ratio < usualRatio.low || ratio > usualRatio.high) {
    notes4.push(
      practice(
        `needle is ${ratio.toFixed(2)} times as wide as the doubled thread, ${usualRatio.low} to ${usualRatio.high} is usual`
      )
    );
  }
  return notes4;
}
var rangeInMillimetres = ({ low, high }) => `${low} to ${high} mm`;
function spacingNotes(pattern2, width) {
  const notes4 = [];
  const mm3 = (length2) => length2 * 1e3;
  const pitch = Math.min(...courses(pattern2).map((course) => course.run));
  if (mm3(pitch) < least.pitch.high) {
    notes4.push(
      practice(`pitch = ${inMillimetres(pitch)}, the usual lower bound is ${rangeInMillimetres(least.pitch)}`)
    );
  }
  const rowSpacing = closestRows(pattern2);
  if (rowSpacing !== void 0 && mm3(rowSpacing) < least.rowSpacing.high) {
    const usual2 = rangeInMillimetres(least.rowSpacing);
    notes4.push(practice(`rows ${inMillimetres(rowSpacing)} apart, the usual lower bound is ${usual2}`));
  }
  const neighbour = nearestNeighbour(pattern2).distance;
  if (neighbour < width) {
    const text3 = `holes ${inMillimetres(width)} wide stand ${inMillimetres(neighbour)} apart and run into each other`;
    notes4.push({ level: "warning", text: text3 });
  }
  const offset = pattern2.kind === "rows" ? pattern2.rows[0]?.offset : void 0;
  const edge = Math.max(least.edgeDistance.value / 1e3, least.edgeDistanceOverHoleDiameter.value * width);
  if (offset !== void 0 && offset < edge) {
    notes4.push(
      practice(
        `first row ${inMillimetres(offset)} from the edge, at least ${inMillimetres(edge)} is usual: ${least.edgeDistance.value} mm and ${least.edgeDistanceOverHoleDiameter.value} hole widths`
      )
    );
  }
  return notes4;
}
function closestRows(pattern2) {
  if (pattern2.kind === "rows") return rowsMetAcross(pattern2)?.narrowest;
  return pattern2.kind === "crossing" ? Math.min(pattern2.rowSpacing, pattern2.second.rowSpacing) : pattern2.rowSpacing;
}
function upperNotes({ type, dryThickness: dryThickness2 }) {
  const isLockstitch = type.number?.startsWith("3") ?? false;
  if (!isLockstitch || dryThickness2 * 1e3 <= most.thickness.low) return [];
  const usual2 = rangeInMillimetres(most.thickness);
  return [practice(`dry stack of ${inMillimetres(dryThickness2)}, a lockstitch usually reaches ${usual2}`)];
}
function fractionNotes(fraction) {
  if (fraction <= most.arealFraction.low) return [];
  const percent5 = (value) => `${Number((value * 100).toPrecision(3))} %`;
  return [
    practice(
      `areal fraction of thread = ${percent5(fraction)}, above ${percent5(most.arealFraction.low)} to ${percent5(most.arealFraction.high)} in-plane losses dominate`
    )
  ];
}

// packages/core/src/stitch/in-plane/estimate.ts
var names2 = Object.keys(inPlanePriors);
function checkInPlaneParameters(given) {
  for (const name of names2) {
    const value = given[name];
    if (value === void 0) continue;
    if (name === "cutShare") requireNotNegative(name, value);
    else requirePositive(name, value);
    if (name === "cutShare" && value > 1) {
      fail({ code: "out-of-range", message: `cutShare = ${value}, must not be above 1`, allowed: "0 to 1" });
    }
  }
}
function estimate(quantity2, dependsOn, given) {
  const single2 = parametersBy((prior) => prior.value, given);
  const value = quantity2(single2);
  let [low, high] = [value, value];
  const free = dependsOn.filter((name) => given[name] === void 0);
  for (let corner = 0; corner < 2 ** free.length; corner++) {
    const moved = free.map((name, i) => [name, inPlanePriors[name][corner >> i & 1 ? "high" : "low"]]);
    const at4 = quantity2({ ...single2, ...Object.fromEntries(moved) });
    low = Math.min(low, at4);
    high = Math.max(high, at4);
  }
  return { value, low, high };
}
function parametersBy(choice3, given) {
  const all = names2.map((name) => [name, given[name] ?? choice3(inPlanePriors[name])]);
  return Object.fromEntries(all);
}

// packages/core/src/stitch/in-plane/formulas.ts
function affectedWidth(hole, straightening, spacing2) {
  return Math.min(1, (hole + straightening) / spacing2);
}
function modulusFactor({ E1, G12, nu12 }, affected, waviness) {
  const softer = (E1 / G12 - 2 * (1 + nu12)) * waviness ** 2 / 2;
  return 1 - affected * (1 - 1 / (1 + softer));
}
function kinkingFactor(waviness, misalignment, yieldStrain) {
  return (yieldStrain + misalignment) / (yieldStrain + misalignment + waviness);
}
function pocketArea(hole, pocketLength, along2, bundle) {
  return Math.max(bundle, hole * Math.min(pocketLength, along2) / 2);
}

// packages/core/src/stitch/in-plane/published.ts
import table3 from "@selvage/reference-data/stitched-laminates.json" with { type: "json" };
var inPlane = [
  "tension",
  "flexure",
  "compression, undamaged",
  "tension, compression, flexure",
  "interlaminar shear strength",
  "in-plane modulus and tensile strength"
];
var publishedChanges = Object.values(table3.dataSets).flatMap(
  ({ source, rows }) => rows.flatMap(
    ({ loading = "", quantity: quantity2 = "", value, low = value, high = value, unit: unit2, access }) => unit2 === "%" && inPlane.includes(loading) && low !== void 0 && high !== void 0 ? [{ loading, quantity: quantity2, low: 1 + low / 100, high: 1 + high / 100, source, access }] : []
  )
);

// packages/core/src/stitch/in-plane/in-plane-knockdown.ts
var most2 = 0.5;
function inPlaneKnockdown(input) {
  check2(input);
  const { ply: ply3, spacing: spacing2, pitch, penetrationDensity: penetrationDensity2, bundleDiameter, holeWidth: holeWidth2 } = input;
  const given = input.parameters ?? {};
  const hole = (p2) => holeWidth2 ?? p2.holeOverBundle * bundleDiameter;
  const needle = (p2) => input.needleDiameter ?? hole(p2);
  const affected = (p2) => affectedWidth(hole(p2), p2.straighteningOverHole * hole(p2), spacing2);
  const kinking = (p2) => kinkingFactor(1 / p2.pocketAspect, p2.misalignment, p2.yieldShearStrain);
  const bundle = Math.PI * bundleDiameter ** 2 / 4;
  const along2 = 1 / (penetrationDensity2 * spacing2);
  const displaced = (p2) => penetrationDensity2 * pocketArea(hole(p2), p2.pocketAspect * hole(p2), along2, bundle);
  const cut = (p2, distance2) => 1 - p2.cutShare * Math.min(1, needle(p2) / distance2);
  const width = ["holeOverBundle"];
  const strips = [...width, "straighteningOverHole"];
  const kinks = ["pocketAspect", "misalignment", "yieldShearStrain"];
  const pockets = [...width, "pocketAspect"];
  const share2 = estimate(affected, strips, given);
  const room = estimate(displaced, pockets, given);
  const thread = threadShare(penetrationDensity2 * bundle);
  return {
    affectedWidth: share2,
    waviness: estimate((p2) => 1 / p2.pocketAspect, ["pocketAspect"], given),
    modulus: estimate((p2) => modulusFactor(ply3, affected(p2), 1 / p2.pocketAspect), [...strips, "pocketAspect"], given),
    compression: {
      lower: estimate(kinking, kinks, given),
      upper: estimate((p2) => 1 - affected(p2) * (1 - kinking(p2)), [...strips, ...kinks], given)
    },
    tension: estimate((p2) => cut(p2, spacing2), [...width, "cutShare"], given),
    perforation: {
      lower: estimate((p2) => Math.max(0, 1 - hole(p2) / pitch), width, given),
      upper: estimate((p2) => cut(p2, pitch), [...width, "cutShare"], given)
    },
    displaced: { lower: thread, upper: room },
    crowding: {
      lower: 1 / (1 - thread),
      upper: estimate((p2) => 1 / (1 - Math.min(most2, displaced(p2))), pockets, given)
    },
    published: publishedChanges,
    notes: notesOf2(share2, room, input),
    sources: uniqueSources(
      ["budiansky-1983", "argon-1972", "mouritz-cox-2000", "common-practice"],
      ["mouritz-leong-herszberg-1997"],
      publishedChanges.map(({ source }) => source)
    )
  };
}
function threadShare(share2) {
  if (share2 < most2) return share2;
  return fail({
    code: "out-of-range",
    message: `thread takes ${Number((share2 * 100).toPrecision(3))} % of the area, must be below ${most2 * 100} %`,
    allowed: "fewer penetrations or a finer thread"
  });
}
function check2(input) {
  const { ply: ply3, holeWidth: holeWidth2, needleDiameter: needleDiameter2, parameters = {} } = input;
  for (const name of ["spacing", "pitch", "bundleDiameter"]) requirePositive(name, input[name], inMillimetres);
  requirePositive("penetrationDensity", input.penetrationDensity, (N) => `${N} 1/m^2`);
  if (holeWidth2 !== void 0) requirePositive("holeWidth", holeWidth2, inMillimetres);
  if (needleDiameter2 !== void 0) requirePositive("needleDiameter", needleDiameter2, inMillimetres);
  for (const name of ["E1", "G12"]) requirePositive(name, ply3[name], (E) => `${E / 1e9} GPa`);
  requireNotNegative("nu12", ply3.nu12);
  if (ply3.E1 / ply3.G12 < 2 * (1 + ply3.nu12)) {
    fail({
      code: "out-of-range",
      message: `E1/G12 = ${Number((ply3.E1 / ply3.G12).toPrecision(4))}, below the 2 (1 + nu12) of an isotropic sheet`,
      allowed: "a ply stiffer along its fibres than an isotropic sheet of the same shear modulus"
    });
  }
  checkInPlaneParameters(parameters);
}
function notesOf2(share2, room, { parameters = {}, holeWidth: holeWidth2 }) {
  const notes4 = [
    {
      level: "warning",
      text: "in-plane losses are bounds, not predictions: studies in print contradict one another, most changes lie within 20 % either way, the worst read lost 45 % of strength and 36 % of modulus in tension",
      source: "mouritz-leong-herszberg-1997"
    }
  ];
  if (Object.keys(parameters).length === 0) {
    const width = holeWidth2 === void 0 ? "hole width, " : "";
    const text3 = `${width}pocket length, straightening width, cut fibres, waviness before stitching and shear yield taken from the priors of stitching, not measured`;
    notes4.push({ level: "assumption", text: text3, source: "common-practice" });
  }
  if (share2.value >= 1) {
    const text3 = "disturbed strips of neighbouring holes meet: the whole width counts as disturbed";
    notes4.push({ level: "warning", text: text3 });
  }
  if (room.high >= most2) {
    notes4.push({
      level: "warning",
      text: "thread and pockets would take half of the area or more: outside the range of the estimate"
    });
  }
  return notes4;
}

// packages/core/src/stitch/sewing-time.ts
function sewingTime({ stitches, rows, rate, setup = 0, handling = 0 }) {
  requirePositive("rate", rate, (r) => `${r * 60} stitches per minute`);
  requireNotNegative("stitches", stitches);
  requireNotNegative("rows", rows);
  requireNotNegative("setup", setup, (t) => `${t} s`);
  requireNotNegative("handling", handling, (t) => `${t} s`);
  return stitches / rate + rows * setup + handling;
}

// packages/core/src/stitch/pattern-notes.ts
var noticeable3 = 0.05;
function patternNotes(pattern2) {
  switch (pattern2.kind) {
    case "rows":
      return rowNotes(pattern2);
    case "crossing":
      return crossingNotes(pattern2);
    case "zigzag": {
      if (pattern2.swing < pattern2.rowSpacing) return [];
      const [swing, spacing2] = [inMillimetres(pattern2.swing), inMillimetres(pattern2.rowSpacing)];
      return [{ level: "warning", text: `zigzags of ${swing} swing, ${spacing2} apart, reach over each other` }];
    }
    default:
      return [];
  }
}
function rowNotes(pattern2) {
  const width = inMillimetres(countedWidth(pattern2));
  const how = pattern2.bandWidth !== void 0 ? "the given band" : pattern2.rows.length === 1 ? "twice the offset of the single row" : "rows times their mean distance";
  const notes4 = [
    { level: "assumption", text: `numbers per area of edge rows are counted over a band of ${width}: ${how}` }
  ];
  pattern2.rows.forEach((row, index) => {
    const { pitch } = closeRow(row);
    if (Math.abs(pitch - row.pitch) > noticeable3 * row.pitch) {
      const text3 = `row ${index + 1} closes at a pitch of ${inMillimetres(pitch)} instead of ${inMillimetres(row.pitch)}`;
      notes4.push({ level: "warning", text: text3 });
    }
  });
  return notes4;
}
function crossingNotes(pattern2) {
  const { repeats, sharedDensity } = meetings(pattern2);
  const notes4 = [];
  if (!repeats) {
    notes4.push({
      level: "assumption",
      text: "the two sets never fall into step: no shared holes counted, closest holes are those of a searched part"
    });
  }
  if (sharedDensity > 0) {
    const share2 = (100 * sharedDensity / holeDensity(pattern2)).toPrecision(3);
    notes4.push({
      level: "assumption",
      text: `${share2} % of the holes are sewn by both sets: each pass leaves its own thread, the hole counts once`
    });
  }
  if ((pattern2.angle ?? 90) !== 90) {
    notes4.push({
      level: "assumption",
      text: "distances between rows met by a crack are those of the first set: the second, at an angle, lies in between"
    });
  }
  return notes4;
}

// packages/core/src/stitch/summary.ts
function stitchSummary(plan) {
  const { pattern: pattern2, needleThread, needleNumber } = plan;
  const seam = { ...plan, type: withStrands(stitchType(plan.type), plan.strands ?? 1) };
  const fraction = arealFraction(seam);
  const { notes: threadNotes, sources: threadSources, ...consumption } = threadConsumption(seam);
  const hole = holes(seam);
  const needle = needleFor(needleThread);
  const legs = fraction.above.fibre <= fraction.below.fibre ? fraction.above.legs : fraction.below.legs;
  const across2 = rowsMetAcross(pattern2);
  const totals2 = consumption.totals;
  const rows = totals2?.rows.reduce((sum5, row) => sum5 + row.rows, 0) ?? 0;
  return {
    strands: legs.needle + legs.under,
    threadDiameter: threadDiameter(needleThread),
    ...hasUnderThread(seam.type) && { underThreadDiameter: threadDiameter(plan.underThread ?? needleThread) },
    bundleDiameter: threadDiameter(needleThread, seam.type.legsAbove.needle),
    penetrationDensity: penetrationDensity(pattern2),
    holeDensity: holeDensity(pattern2),
    rowLengthPerArea: rowLengthPerArea(pattern2),
    meanRun: meanRun(pattern2),
    arealFraction: fraction.fibre,
    bundleArealFraction: fraction.bundle,
    arealFractionAbove: fraction.above.fibre,
    arealFractionBelow: fraction.below.fibre,
    threadLengthPerStitch: consumption.perStitch.total,
    threadLengthPerRowLength: consumption.perRowLength.total,
    threadLengthPerArea: consumption.perArea.total,
    threadMassPerRowLength: consumption.massPerRowLength.total,
    threadMassPerArea: consumption.massPerArea.total,
    addedArealMass: consumption.addedArealMass,
    addedThickness: consumption.addedThickness.total,
    nearestNeighbour: nearestNeighbour(pattern2).distance,
    ...across2 && { rowsMetAcross: across2 },
    rowsMetAlong: rowsMetAlong(pattern2),
    usualNeedle: { from: needle.from, to: needle.to },
    ...needleNumber !== void 0 && { needleDiameter: needleDiameter(needleNumber) },
    holeWidth: hole.width,
    netWidth: hole.netWidth,
    ...totals2 && { stitches: totals2.stitches },
    ...totals2 && plan.sewing && { sewingTime: sewingTime({ ...plan.sewing, stitches: totals2.stitches, rows }) },
    consumption,
    notes: uniqueNotes([
      ...patternNotes(pattern2),
      ...fraction.notes,
      ...fractionNotes(fraction.fibre),
      ...threadNotes,
      ...needle.notes,
      ...hole.notes
    ]),
    sources: uniqueSources(fraction.sources, threadSources, needle.sources)
  };
}

// packages/core/src/stitch/toughness/lengths.ts
function pairStiffness(arm2, other) {
  return 2 / (1 / arm2.bendingStiffness + 1 / other.bendingStiffness);
}
function bridgingLength(stiffness2, penetrationDensity2, { peak: peak2 }) {
  return (2 * stiffness2 * peak2.opening / (penetrationDensity2 * peak2.force)) ** 0.25;
}
function bridgingZone(length2, measured2) {
  const { zoneOverLength, zoneShortfall } = zonePriors;
  const high = zoneOverLength.high * length2;
  return { low: zoneOverLength.low * length2, high, needed: measured2 ? high : zoneShortfall.high * high };
}
function discreteness(rowDistance, length2) {
  const ratio = rowDistance / length2;
  const rows = [{ r: 0, low: 1, high: 1 }, ...testOverSteady.rows];
  const next = rows.findIndex((row) => row.r >= ratio);
  const [a, b] = [rows[Math.max(0, next - 1)], rows[next]];
  if (a === void 0 || b === void 0) return { ratio };
  const t = b.r > a.r ? (ratio - a.r) / (b.r - a.r) : 0;
  const { factor, exponent } = testOverSteady.fit;
  return {
    ratio,
    testFactor: {
      low: a.low + t * (b.low - a.low),
      fit: 1 + factor * ratio ** exponent,
      high: a.high + t * (b.high - a.high)
    }
  };
}
function armCeiling(arm2, other) {
  const moments = [arm2, other].map(
    ({ bendingStiffness, thickness, failureStrain: failureStrain2 }) => failureStrain2 === void 0 ? void 0 : 2 * bendingStiffness * Math.min(failureStrain2.tension, failureStrain2.compression) / thickness
  );
  const known = moments.filter((moment) => moment !== void 0);
  if (known.length === 0) return void 0;
  return Math.min(...known) ** 2 / pairStiffness(arm2, other);
}

// packages/core/src/stitch/toughness/toughness.ts
var mm2 = (length2) => `${Number((length2 * 1e3).toPrecision(2))} mm`;
var kJ = (G) => `${Number((G / 1e3).toPrecision(3))} kJ/m^2`;
function toughness(input) {
  const { law, penetrationDensity: penetrationDensity2, bondToughness, arm: arm2 } = input;
  check3(input);
  const increment = penetrationDensity2 * law.work;
  const result = { bond: bondToughness, increment, sources: uniqueSources(law.sources, ["bao-suo-1992"]) };
  const steady = bondToughness + increment;
  if (arm2 === void 0) {
    const text3 = "toughness holds once the crack has grown so far that the bridged zone is full: tens of millimetres";
    const note2 = { level: "assumption", text: text3, source: "tong-mouritz-bannister-2002" };
    return { ...result, steady, usable: steady, notes: uniqueNotes([...law.notes, note2]) };
  }
  const other = input.otherArm ?? arm2;
  const length2 = bridgingLength(pairStiffness(arm2, other), penetrationDensity2, law);
  const zone = bridgingZone(length2, law.measured === true);
  const ceiling = armCeiling(arm2, other);
  const rows = input.rowDistance === void 0 ? void 0 : discreteness(input.rowDistance, length2);
  const short = input.length !== void 0 && input.length < zone.needed;
  return {
    ...result,
    ...!short && { steady, usable: Math.min(steady, ceiling ?? steady) },
    bridgingLength: length2,
    zone,
    ...rows && { discreteness: rows },
    ...ceiling !== void 0 && { ceiling },
    notes: uniqueNotes([
      ...law.notes,
      lengthNote(input, zone, short),
      ...rows ? rowNotes2(rows, short) : [],
      ...ceiling !== void 0 && ceiling < steady ? [ceilingNote(ceiling, steady, short)] : []
    ]),
    sources: uniqueSources(result.sources, ["independent-script", "tong-mouritz-bannister-2002"])
  };
}
function check3({ penetrationDensity: penetrationDensity2, bondToughness, arm: arm2, otherArm, rowDistance, length: length2 }) {
  requirePositive("penetrationDensity", penetrationDensity2, (N) => `${N} 1/m^2`);
  requireNotNegative("bondToughness", bondToughness, (G) => `${G} J/m^2`);
  for (const one of [arm2, otherArm]) {
    if (one === void 0) continue;
    requirePositive("bendingStiffness of the arm", one.bendingStiffness, (D) => `${D} N m`);
    requirePositive("thickness of the arm", one.thickness, inMillimetres);
    if (one.failureStrain === void 0) continue;
    requirePositive("failureStrain of the arm", Math.min(one.failureStrain.tension, one.failureStrain.compression));
  }
  for (const [name, value] of Object.entries({ rowDistance, length: length2 })) {
    if (value === void 0) continue;
    requirePositive(name, value, inMillimetres);
    if (arm2 === void 0) {
      fail({
        code: "missing-key",
        message: `${name} is given without the arm beside the crack, whose stiffness sets the length of the bridged zone`,
        hint: "the bending stiffness and thickness of the arm"
      });
    }
  }
}
function lengthNote({ length: length2, law }, zone, short) {
  const range = `${mm2(zone.low)} to ${mm2(zone.high)}`;
  if (!short) {
    const text3 = `steady toughness needs ${range} of growth; zones read in print are 10 to 50 mm long`;
    return { level: "assumption", text: text3, source: "tong-mouritz-bannister-2002" };
  }
  const longer = law.measured === true ? "" : `, and printed zones are up to ${zone.needed / zone.high} times as long as computed ones`;
  return {
    level: "warning",
    text: `no steady toughness: ${mm2(length2 ?? 0)} of growth among the stitches is less than the ${mm2(zone.needed)} that a bridged zone may need (computed ${range}${longer}); judge the rows one by one`,
    source: "tong-mouritz-bannister-2002"
  };
}
function rowNotes2({ ratio, testFactor }, short) {
  const rows = `rows are ${Number(ratio.toPrecision(2))} bridging lengths apart`;
  if (testFactor === void 0) {
    const text4 = `${rows}, beyond the computed cases (1.5): each row acts on its own and a test reads strength, not toughness`;
    return [{ level: "warning", text: text4, source: "independent-script" }];
  }
  if (short || testFactor.high < 1.1) return [];
  const times3 = `${testFactor.low.toFixed(1)} to ${testFactor.high.toFixed(1)}`;
  const text3 = `${rows}: a test with aligned rows, worked from the loads at onset, reads ${times3} times the steady toughness (computed, five cases); design with the steady one`;
  return [{ level: "warning", text: text3, source: "independent-script" }];
}
function ceilingNote(ceiling, steady, short) {
  const wanted = short ? "what the stitches could give" : `the steady toughness of ${kJ(steady)}`;
  return {
    level: "warning",
    text: `the arms break at ${kJ(ceiling)}, below ${wanted}: more stitches add nothing; a test needs tabs on the arms until they stand 1.5 times the expected value`
  };
}

// packages/core/src/fracture/coupon/weighted.ts
function weightedQuantile(values, weights, order, share2) {
  const at4 = (list, k) => list[order[k]];
  const last = order.length - 1;
  let before2 = 0;
  const places = order.map((i, k) => {
    const place = k * weights[i] + last * before2;
    before2 += weights[i];
    return place;
  });
  const wanted = share2 * places[last];
  const next = places.findIndex((place) => place > wanted);
  if (next <= 0) return at4(values, next < 0 ? last : 0);
  const [from, to] = [places[next - 1], places[next]];
  const low = at4(values, next - 1);
  return low + (wanted - from) / (to - from) * (at4(values, next) - low);
}
function weightedInterval(values, weights) {
  const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b]);
  const at4 = (share2) => weightedQuantile(values, weights, order, share2);
  return { median: at4(0.5), low: at4(0.05), high: at4(0.95) };
}
function effectiveSamples(weights) {
  const sum5 = weights.reduce((total3, w) => total3 + w, 0);
  return sum5 ** 2 / weights.reduce((total3, w) => total3 + w * w, 0);
}

// packages/core/src/fracture/coupon/calibrate.ts
var usualVariation2 = 0.1;
var fewest = 0.03;
function checkTest({ peakForce, variation = usualVariation2 }) {
  requirePositive("peakForce of a test", peakForce, (force) => `${force} N`);
  if (variation >= 0 && variation <= 1) return;
  fail({
    code: "out-of-range",
    message: `variation = ${variation} of a test, must lie in 0 to 1`,
    allowed: "0 to 1: standard deviation of the mean over the mean"
  });
}
function testWeights(tests, samples) {
  const logs = new Array(samples).fill(0);
  for (const { test, peakForces } of tests) {
    const { peakForce, variation = usualVariation2 } = test;
    const square2 = variation ** 2 + specimenPriors.modelError.value ** 2;
    peakForces.forEach((force, i) => {
      logs[i] = logs[i] - Math.log(force / peakForce) ** 2 / (2 * square2);
    });
  }
  const most5 = Math.max(...logs);
  return logs.map((log) => Math.exp(log - most5));
}
function calibrationNotes(tests, weights) {
  const effective = effectiveSamples(weights);
  const many = tests === 1 ? "one test" : `${tests} tests`;
  const notes4 = [
    {
      level: "assumption",
      text: `Ranges narrowed by ${many}: samples weigh by how near they come to the peak force, with a model error of ${100 * specimenPriors.modelError.value} % besides the scatter of the tests.`,
      source: "common-practice"
    }
  ];
  if (effective < fewest * weights.length) {
    notes4.push({
      level: "warning",
      text: `Only ${Math.max(1, Math.round(effective))} of ${weights.length} samples come near the tests: tests and assumed ranges contradict each other; look at thread, lay-up and test before trusting either.`
    });
  }
  return notes4;
}
function bearsOn(tested, coupon) {
  if (tested.specimen.kind === "wedge") return false;
  const { stitching } = tested;
  if (stitching === void 0 || coupon.stitching === void 0) {
    return stitching === void 0 && tested.specimen.bondToughness === coupon.specimen.bondToughness;
  }
  return sameStitch(stitching, coupon.stitching);
}
function sameStitch(a, b) {
  const essence = ({ penetration, measured: measured2, legAngle = 0 }) => {
    const { type, needleThread, underThread, anchors, bends, parameters } = penetration;
    const thread = needleThread;
    const law = measured2 && [measured2.opening, measured2.force];
    return JSON.stringify([type, thread, underThread ?? thread, anchors, bends, parameters, law, legAngle]);
  };
  return essence(a) === essence(b);
}

// packages/core/src/fracture/specimen/rows-across.ts
var same2 = 1e-9;
function rowsAcross(input) {
  const { pattern: pattern2, growth: growth2, width, from, to, origin = 0, curve, failure: failure2 } = input;
  checkPattern(pattern2);
  requirePositive("width", width, inMillimetres);
  if (!(Number.isFinite(origin) && to > from && to - from < 1e3 && from > -1e3)) {
    fail({
      code: "out-of-range",
      message: `rows wanted from ${inMillimetres(from)} to ${inMillimetres(to)}, must be a stretch of the specimen`,
      allowed: "from below to, both finite"
    });
  }
  const found = [];
  for (const { period, phase, perLength } of growth2 === "across" ? linesAcross(pattern2) : linesAlong(pattern2)) {
    const first2 = Math.ceil((from - origin - phase) / period - 1e-9);
    const last = Math.ceil((to - origin - phase) / period - 1e-9);
    demandFew(last - first2);
    for (let n = first2; n < last; n++) {
      found.push({ position: origin + phase + n * period, penetrations: perLength * width });
    }
  }
  for (const place of single(pattern2, growth2, { width, from: from - origin, to: to - origin })) {
    found.push({ position: origin + place, penetrations: 1 });
  }
  if (pattern2.kind === "rows" && growth2 === "across") {
    for (const row of pattern2.rows) {
      const position = origin + row.offset;
      if (position >= from && position < to) found.push({ position, penetrations: width / closeRow(row).pitch });
    }
  }
  found.sort((a, b) => a.position - b.position);
  const merged = [];
  for (const one of found) {
    const last = merged.at(-1);
    if (last !== void 0 && one.position - last.position <= same2) last.penetrations += one.penetrations;
    else merged.push({ ...one });
  }
  return merged.map((one) => ({ ...one, curve, failure: failure2 }));
}
function linesAcross(pattern2) {
  if (pattern2.kind === "rows") return [];
  const { pitch: p2, rowSpacing: s } = pattern2;
  const own2 = { period: s, phase: 0, perLength: 1 / p2 };
  if (pattern2.kind === "zigzag")
    return [-1, 1].map((side2) => ({ ...own2, phase: side2 * pattern2.swing / 2, perLength: 1 / (2 * p2) }));
  if (pattern2.kind !== "crossing" || !square(pattern2)) return [own2];
  const { pitch, rowSpacing } = pattern2.second;
  return [own2, { period: pitch, phase: pattern2.offset?.y ?? 0, perLength: 1 / rowSpacing }];
}
function linesAlong(pattern2) {
  if (pattern2.kind === "rows") return [];
  const { pitch: p2, rowSpacing: s } = pattern2;
  const own2 = { period: p2, phase: 0, perLength: 1 / s };
  if (pattern2.kind === "staggered") {
    return [0, pattern2.shift ?? 0.5].map((share2) => ({ period: p2, phase: share2 * p2, perLength: 1 / (2 * s) }));
  }
  if (pattern2.kind !== "crossing" || !square(pattern2)) return [own2];
  const { pitch, rowSpacing } = pattern2.second;
  return [own2, { period: rowSpacing, phase: pattern2.offset?.x ?? 0, perLength: 1 / pitch }];
}
function square(pattern2) {
  return (pattern2.angle ?? 90) === 90;
}
function single(pattern2, growth2, { width, from, to }) {
  if (pattern2.kind === "rows") {
    if (growth2 === "across") return [];
    return penetrations(pattern2).filter(({ x, y }) => y < width && x >= from && x < to).map(({ x }) => x);
  }
  if (pattern2.kind !== "crossing" || square(pattern2)) return [];
  const across2 = { x: 0, y: from, length: width, width: to - from };
  const along2 = { x: from, y: 0, length: to - from, width };
  return penetrations(pattern2, growth2 === "across" ? across2 : along2).filter(({ set }) => set === 1).map(({ x, y }) => growth2 === "across" ? y : x);
}
function demandFew(rows) {
  if (rows <= 1e5) return;
  fail({ code: "out-of-range", message: `rows = ${rows}, must be at most 100000`, allowed: "at most 100000 rows" });
}

// packages/core/src/fracture/coupon/coupon-rows.ts
function pathOf(kind2, { legAngle = 0 }) {
  if (kind2 === "enf") return { angle: 90 };
  return legAngle > 0 ? { angle: legAngle } : void 0;
}
function couponLaw(kind2, stitching, parameters = stitching.penetration.parameters) {
  if (stitching.measured !== void 0) return stitching.measured;
  const path = pathOf(kind2, stitching);
  return bridgingLaw({ ...stitching.penetration, ...parameters && { parameters }, ...path && { path } });
}
function couponRows({ specimen, stitching }, law) {
  if (stitching === void 0 || law === void 0) return [];
  const { pattern: pattern2, growth: growth2, from, to, origin } = stitching;
  const curve = { opening: law.opening, force: law.force };
  return rowsAcross({ pattern: pattern2, growth: growth2, width: specimen.width, from, to, origin, curve, failure: law.failure });
}
function patternMet({ pattern: pattern2, growth: growth2 }) {
  const met = growth2 === "across" ? rowsMetAcross(pattern2) : rowsMetAlong(pattern2);
  const density = penetrationDensity(pattern2);
  if (met !== void 0) return { density, spacing: met.spacing, perFront: met.perFrontLength };
  const pitch = pattern2.kind === "rows" ? pattern2.rows[0]?.pitch ?? 1 : pattern2.pitch;
  return { density, perFront: 1 / pitch };
}
function growthRange(specimen) {
  if (specimen.kind === "wedge") return { from: 0, to: specimen.depth };
  const end2 = specimen.kind === "enf" ? (specimen.span + (specimen.loadSpan ?? 0)) / 2 : specimen.length;
  return { from: specimen.crackLength, to: Math.min(end2, specimen.until?.crackLength ?? end2) };
}
function stitchedGrowth(specimen, { from, to }) {
  const range = growthRange(specimen);
  return Math.max(0, Math.min(to, range.to) - Math.max(from, range.from));
}

// packages/core/src/fracture/path-work.ts
function lastWork(before2, now) {
  const [c = nothing, b, a] = [before2.at(-1), before2.at(-2), before2.at(-3)];
  const h = now.displacement - c.displacement;
  const plain6 = (now.load + c.load) / 2 * h;
  if (b === void 0 || !even2(b, c, now)) return plain6;
  const bend = second(b, c, now);
  const curved = plain6 - bend * h ** 3 / 6;
  if (a === void 0 || !even2(a, b, c)) return curved;
  const third = (bend - second(a, b, c)) / (now.displacement - a.displacement);
  return curved - third * (h ** 4 / 12 + (c.displacement - b.displacement) * h ** 3 / 6);
}
function workAlong(path) {
  let sum5 = 0;
  return path.map((now, i) => {
    const before2 = path[i - 1] ?? nothing;
    const earlier = path[i - 2];
    const next = path[i + 1];
    const h = now.displacement - before2.displacement;
    const left4 = earlier !== void 0 && even2(earlier, before2, now) ? second(earlier, before2, now) : void 0;
    const right = i > 0 && next !== void 0 && even2(before2, now, next) ? second(before2, now, next) : void 0;
    let bend = left4 ?? right ?? 0;
    if (left4 !== void 0 && right !== void 0 && earlier !== void 0 && next !== void 0) {
      const third = (right - left4) / (next.displacement - earlier.displacement);
      const middle = (before2.displacement + now.displacement) / 2;
      bend += third * (3 * middle - earlier.displacement - before2.displacement - now.displacement);
    }
    sum5 += (now.load + before2.load) / 2 * h - bend * h ** 3 / 6;
    return sum5;
  });
}
var nothing = { displacement: 0, load: 0 };
function even2(a, b, c) {
  const ratio = (b.displacement - a.displacement) / (c.displacement - b.displacement);
  return ratio > 0.3 && ratio < 3;
}
function second(a, b, c) {
  const [g, h] = [b.displacement - a.displacement, c.displacement - b.displacement];
  return ((c.load - b.load) / h - (b.load - a.load) / g) / (g + h);
}

// packages/core/src/fracture/elastica-section.ts
var emptySection = () => ({
  dx: 1,
  dy: 0,
  dM: 0,
  dxByAngle: 0,
  dyByAngle: 0,
  dMByAngle: 0,
  dxByH: 0,
  dxByV: 0,
  dyByV: 0,
  dMByH: 0,
  dMByV: 0,
  energy: 0
});
function sectionAt({ stretch, shear: shear2 }, angle2, H2, V3, out) {
  const c = Math.cos(angle2);
  const s = Math.sin(angle2);
  const N = H2 * c + V3 * s;
  const T = V3 * c - H2 * s;
  const length2 = 1 + N * stretch;
  const slant = T * shear2;
  const dx = length2 * c - slant * s;
  const dy = length2 * s + slant * c;
  const along2 = stretch * T;
  const across2 = shear2 * N;
  out.dx = dx;
  out.dy = dy;
  out.dM = H2 * dy - V3 * dx;
  out.dxByAngle = along2 * c + across2 * s - dy;
  out.dyByAngle = along2 * s - across2 * c + dx;
  out.dMByAngle = H2 * out.dyByAngle - V3 * out.dxByAngle;
  out.dxByH = stretch * c * c + shear2 * s * s;
  out.dxByV = (stretch - shear2) * s * c;
  out.dyByV = stretch * s * s + shear2 * c * c;
  out.dMByH = dy + H2 * out.dxByV - V3 * out.dxByH;
  out.dMByV = H2 * out.dyByV - V3 * out.dxByV - dx;
  out.energy = (stretch * N * N + shear2 * T * T) / 2;
}
var [X, Y, ANGLE, M, H, V] = [0, 1, 2, 3, 4, 5];
var perArm = 6;
function armSlope(compliance, z15, at4, offset, size4, f, J, section2) {
  const value = (i) => z15[at4 + offset + i] ?? 0;
  sectionAt(compliance, value(ANGLE), value(H), value(V), section2);
  const { bend } = compliance;
  f[offset + X] = section2.dx;
  f[offset + Y] = section2.dy;
  f[offset + ANGLE] = bend * value(M);
  f[offset + M] = section2.dM;
  const row = (i) => (offset + i) * size4 + offset;
  J[row(X) + ANGLE] = section2.dxByAngle;
  J[row(X) + H] = section2.dxByH;
  J[row(X) + V] = section2.dxByV;
  J[row(Y) + ANGLE] = section2.dyByAngle;
  J[row(Y) + H] = section2.dxByV;
  J[row(Y) + V] = section2.dyByV;
  J[row(ANGLE) + M] = bend;
  J[row(M) + ANGLE] = section2.dMByAngle;
  J[row(M) + H] = section2.dMByH;
  J[row(M) + V] = section2.dMByV;
}
function firstIntegral(bend, M3, H2, V3, section2) {
  return bend * M3 * M3 / 2 + H2 * section2.dx + V3 * section2.dy - section2.energy;
}

// packages/core/src/fracture/bed.ts
function bedOf2({ bendingStiffness: D, shearStiffness, E3, thickness }) {
  const k = 2 * E3 / thickness;
  const root2 = Math.sqrt(k * D);
  const S = Math.sqrt(k / shearStiffness + 2 * Math.sqrt(k / D));
  return { liftByMoment: 1 / root2, liftByForce: S / k, turnByMoment: S / root2 };
}
function bedLength({ bendingStiffness: D, shearStiffness, E3, thickness }) {
  const k = 2 * E3 / thickness;
  const half = k / (2 * shearStiffness);
  const square2 = half * half - k / D;
  if (square2 >= 0) return Math.sqrt((half + Math.sqrt(square2)) / (k / D));
  return 1 / Math.sqrt((half + Math.sqrt(k / D)) / 2);
}

// packages/core/src/fracture/row-stages.ts
var rounding2 = 1e-9;
function rowStages(law, length2, force) {
  const points4 = [...law.opening].map((w, i) => ({
    w: w / length2,
    f: (law.force[i] ?? 0) / force,
    area: (law.area[i] ?? 0) / (force * length2)
  }));
  const top = Math.max(...points4.map(({ f }) => f));
  const stages = [];
  let part = [];
  const close3 = (drops) => {
    if (part.length > 1) {
      stages.push({
        opening: part.map(({ w }) => w),
        force: part.map(({ f }) => f),
        area: part.map(({ area }) => area),
        from: part[0]?.w ?? 0,
        to: part.at(-1)?.w ?? 0,
        drops
      });
    }
    part = [];
  };
  for (const point of points4) {
    const before2 = part.at(-1);
    if (before2 !== void 0 && before2.w === point.w) {
      if (before2.f - point.f <= rounding2 * top) continue;
      close3(true);
    }
    part.push(point);
  }
  close3((part.at(-1)?.f ?? 0) > rounding2 * top);
  return {
    stages,
    firm: {
      opening: law.firm / length2,
      stiffness: law.stiffness * length2 / force,
      area: points4[law.opening.indexOf(law.firm)]?.area ?? 0
    },
    peak: { force: top, opening: law.peak / length2 },
    work: points4.at(-1)?.area ?? 0
  };
}
var untouched = { stage: 0, opening: 0 };
var firmness = 1e5;
var noForce = () => ({ force: 0, slope: 0, held: 0, lost: 0 });
var isSpent = (law, memory) => memory.stage >= law.stages.length;
function rowForce(law, memory, opening2, out) {
  const stage = law.stages[memory.stage];
  out.force = 0;
  out.slope = 0;
  out.held = 0;
  if (stage === void 0) {
    out.lost = law.work;
    return;
  }
  const { firm } = law;
  const { clamp } = memory;
  if (clamp !== void 0) {
    out.force = clamp.force + clamp.stiffness * (opening2 - memory.opening);
    out.slope = clamp.stiffness;
    out.held = out.force / (opening2 * firm.stiffness) * elasticEnergy(law, opening2);
    out.lost = (stage.area.at(-1) ?? 0) - out.held;
    return;
  }
  const most5 = Math.max(opening2, memory.opening);
  onStage(stage, most5, out);
  const left4 = most5 > firm.opening ? out.force / (most5 * firm.stiffness) : 1;
  out.lost = most5 > firm.opening ? out.lost - left4 * elasticEnergy(law, most5) : 0;
  if (opening2 < most5) elastic(law, opening2, left4, out);
  out.held = left4 * elasticEnergy(law, opening2);
}
function elastic({ stages, firm }, opening2, share2, out) {
  const [first2] = stages;
  if (opening2 > firm.opening || first2 === void 0) {
    out.force = share2 * firm.stiffness * opening2;
    out.slope = share2 * firm.stiffness;
    return;
  }
  const { lost } = out;
  onStage(first2, Math.max(0, opening2), out);
  out.slope *= share2;
  out.force = opening2 < 0 ? out.slope * opening2 : share2 * out.force;
  out.lost = lost;
}
function elasticEnergy({ stages, firm }, opening2) {
  if (opening2 > firm.opening) return firm.area + firm.stiffness * (opening2 ** 2 - firm.opening ** 2) / 2;
  const out = noForce();
  const [first2] = stages;
  if (first2 === void 0) return 0;
  onStage(first2, Math.max(0, opening2), out);
  return opening2 < 0 ? out.slope * opening2 ** 2 / 2 : out.lost;
}
function remember(law, memory, opening2) {
  const stage = law.stages[memory.stage];
  if (stage === void 0 || memory.clamp !== void 0 || opening2 <= memory.opening) return memory;
  return { stage: opening2 >= stage.to && !stage.drops ? law.stages.length : memory.stage, opening: opening2 };
}
function clamped2(law, memory, opening2) {
  const stiffness2 = firmness * law.peak.force / law.peak.opening;
  return { ...memory, opening: opening2, clamp: { force: law.stages[memory.stage]?.force.at(-1) ?? 0, stiffness: stiffness2 } };
}
var afterDrop = (law, { stage }) => law.stages[stage + 1]?.force[0] ?? 0;
var dropped = (law, { stage, opening: opening2 }) => ({
  stage: stage + 1,
  opening: law.stages[stage + 1]?.from ?? opening2
});
function onStage({ opening: opening2, force, area, from, to, drops }, at4, out) {
  if (at4 >= to) {
    out.force = drops ? force.at(-1) ?? 0 : 0;
    out.slope = 0;
    out.lost = (area.at(-1) ?? 0) + out.force * (at4 - to);
    return;
  }
  let i = 1;
  while (i < opening2.length - 1 && (opening2[i] ?? 0) <= at4) i++;
  const w0 = opening2[i - 1] ?? 0;
  const f0 = force[i - 1] ?? 0;
  const past = Math.max(at4, from) - w0;
  out.slope = ((force[i] ?? 0) - f0) / ((opening2[i] ?? 0) - w0);
  out.force = f0 + out.slope * past;
  out.lost = (area[i - 1] ?? 0) + (f0 + out.force) / 2 * past;
}

// packages/core/src/fracture/peel-model.ts
var naturalUnits = (arm2, toughness3) => ({
  length: Math.sqrt(arm2.bendingStiffness / toughness3),
  force: toughness3
});
function naturalArm(arm2, { length: length2, force }) {
  const bed = bedOf2(arm2);
  return {
    section: {
      bend: force * length2 * length2 / arm2.bendingStiffness,
      stretch: force / arm2.axialStiffness,
      shear: force / arm2.shearStiffness
    },
    bed: {
      liftByMoment: force * bed.liftByMoment,
      liftByForce: force * bed.liftByForce / length2,
      turnByMoment: force * length2 * bed.turnByMoment
    }
  };
}
function pull(rows, gap, out, one) {
  out.force = 0;
  out.slope = 0;
  out.held = 0;
  out.lost = 0;
  for (const row of rows) {
    rowForce(row.law, row.memory, gap - row.start, one);
    out.force += one.force;
    out.slope += one.slope;
    out.held += one.held;
    out.lost += one.lost;
  }
}

// packages/core/src/fracture/peel-energy.ts
function armState({ model, limits: limits2 }, z15, steps) {
  const { size: size4, places, arms: arms2 } = model;
  const section2 = emptySection();
  let [energy2, strain2, share2] = [0, 0, 0];
  const value = (k, i) => i === void 0 ? 0 : z15[k * size4 + i] ?? 0;
  places.forEach((place, a) => {
    const compliance = arms2[a]?.section ?? { bend: 0, stretch: 0, shear: 0 };
    const limit5 = limits2[a];
    const { bend, stretch } = compliance;
    const density = (M3, angle2, H2, V3) => {
      sectionAt(compliance, angle2, H2, V3, section2);
      if (limit5 !== void 0) {
        const bent = Math.abs(bend * M3) * limit5.half;
        const axial = stretch * (H2 * Math.cos(angle2) + V3 * Math.sin(angle2));
        strain2 = Math.max(strain2, bent + Math.abs(axial));
        share2 = Math.max(share2, (bent + axial) / limit5.tension, (bent - axial) / limit5.compression);
      }
      return bend * M3 * M3 / 2 + section2.energy;
    };
    steps.forEach((h, k) => {
      const [H2, V3] = [value(k + 1, place.H), value(k + 1, place.V)];
      const [M0, M1] = [value(k, place.moment), value(k + 1, place.moment)];
      const [t0, t1] = [value(k, place.angle), value(k + 1, place.angle)];
      const e0 = density(M0, t0, H2, V3);
      const slope0 = section2.dM;
      const e1 = density(M1, t1, H2, V3);
      const slope1 = section2.dM;
      const Mm = (M0 + M1) / 2 + h / 8 * (slope0 - slope1);
      const em = density(Mm, (t0 + t1) / 2 + h / 8 * bend * (M0 - M1), H2, V3);
      energy2 += h / 6 * (e0 + 4 * em + e1);
    });
  });
  return { energy: energy2 * (2 / arms2.length), strain: strain2, share: share2 };
}
function rowState({ model, rows }, { memory }, holding, at4, z15) {
  const sum5 = noForce();
  const one = noForce();
  let [held3, thread, zone] = [0, 0, 0];
  rows.forEach(({ law }, index) => {
    const past = memory[index];
    if (past !== void 0 && isSpent(law, past)) thread += law.work;
  });
  holding.forEach((here, point) => {
    if (here.length === 0) return;
    pull(here, model.gap(z15, point), sum5, one);
    held3 += sum5.held;
    thread += sum5.lost;
    if (sum5.force > 0) zone = Math.max(zone, at4[point] ?? 0);
  });
  return { held: held3, thread, zone };
}

// packages/core/src/fracture/peel-guess.ts
function along(from, to, control) {
  let t = (control.length - from.length) / (to.length - from.length);
  if (to.length === from.length) {
    const root2 = Math.sqrt(from.release);
    t = "release" in control ? (Math.sqrt(control.release) - root2) / (Math.sqrt(to.release) - root2) : (control.displacement - from.displacement) / (to.displacement - from.displacement);
  }
  return Number.isFinite(t) ? Math.min(Math.max(t, 0), 2) : 1;
}
function carriedOver({ size: size4, places }, near5, length2, at4) {
  const z15 = new Float64Array(at4.length * size4);
  const last = near5.at.length - 1;
  const onArm = new Set(places.flatMap(({ H: H2, V: V3 }) => H2 === void 0 ? [V3] : [H2, V3]));
  const read2 = (components, shift) => {
    let k = 0;
    at4.forEach((s, point) => {
      const from = Math.min(Math.max(s - shift, 0), near5.at[last] ?? 0);
      while (k < last - 1 && (near5.at[k + 1] ?? 0) < from) k++;
      const [s0, s1] = [near5.at[k] ?? 0, near5.at[k + 1] ?? 1];
      const t = (from - s0) / (s1 - s0);
      for (const i of components) {
        z15[point * size4 + i] = (1 - t) * (near5.z[k * size4 + i] ?? 0) + t * (near5.z[(k + 1) * size4 + i] ?? 0);
      }
    });
  };
  const all = Array.from({ length: size4 }, (_, i) => i);
  read2(
    all.filter((i) => !onArm.has(i)),
    0
  );
  read2([...onArm], length2 - near5.length);
  return z15;
}
function bringTo({ size: size4, places, gap }, z15, at4, point, { start, memory }) {
  const place = at4[point] ?? 0;
  for (let round = 0; round < 4; round++) {
    const lift = (start + memory.opening - gap(z15, point)) / 2;
    at4.forEach((s, k) => {
      const share2 = place > 0 ? Math.min(1, s / place) : 1;
      for (const { y } of places) z15[k * size4 + y] = (z15[k * size4 + y] ?? 0) + share2 * lift;
    });
  }
}

// packages/core/src/fracture/peel-mesh.ts
var fineFor = 3;
var growth = 0.9;
function peelMesh(length2, rows, bend, fineness2) {
  const step4 = bend / fineness2;
  const at4 = [0];
  const found = [[]];
  let here = 0;
  const evenly = (to) => {
    const count = Math.max(1, Math.ceil((to - here) / step4 - 1e-9));
    for (let i = 1; i <= count; i++) {
      at4.push(i === count ? to : here + (to - here) * i / count);
      found.push([]);
    }
    here = to;
  };
  for (const { index, distance: distance2 } of [...rows].sort((a, b) => a.distance - b.distance)) {
    if (distance2 > here) evenly(distance2);
    found.at(-1)?.push(index);
  }
  const fine2 = Math.min(length2, here + fineFor * bend);
  if (fine2 > here) evenly(fine2);
  let h = step4;
  while (here < length2) {
    h *= 1 + growth / fineness2;
    here = length2 - here < 1.5 * h ? length2 : here + h;
    at4.push(here);
    found.push([]);
  }
  return { at: at4, rows: found };
}

// packages/core/src/fracture/peel-state.ts
var bendingLength = (model, load) => Math.min(...model.arms.map(({ section: section2 }) => 1 / Math.sqrt(section2.bend * Math.max(load, 1e-12))));
function equilibrium(peel, history, control, near5, other) {
  const { model } = peel;
  const { length: length2 } = control;
  const present = [];
  for (let index = 0; index < peel.rows.length; index++) {
    if (held2(peel, history, index) === void 0) continue;
    present.push({ index, distance: Math.max(0, length2 - (peel.rows[index]?.position ?? 0)) });
  }
  const bend = bendingLength(model, near5?.load ?? 0);
  const mesh = peelMesh(length2, present, Math.min(bend, length2 / 3), peel.fineness);
  const holding = mesh.rows.map((indices) => {
    const here = [];
    for (const index of indices) {
      const one = held2(peel, history, index);
      if (one !== void 0) here.push(one);
    }
    return here;
  });
  const steps = new Float64Array(mesh.at.length - 1);
  for (let k = 0; k < steps.length; k++) steps[k] = (mesh.at[k + 1] ?? 0) - (mesh.at[k] ?? 0);
  const guess = near5 === void 0 ? model.guess("release" in control ? control.release : 0, length2, mesh.at) : carriedOver(model, near5, length2, mesh.at);
  if (near5 !== void 0 && other !== void 0) {
    const t = along(other, near5, control) - 1;
    const beyond = carriedOver(model, other, length2, mesh.at);
    for (let i = 0; i < guess.length; i++) guess[i] = (1 + t) * (guess[i] ?? 0) - t * (beyond[i] ?? 0);
  }
  holding.forEach((here, point) => {
    for (const row of here) if (row.memory.clamp !== void 0) bringTo(model, guess, mesh.at, point, row);
  });
  const z15 = solveBoundaryValue(model.problem(control, holding), steps, guess);
  if (z15 === void 0) return void 0;
  const opening2 = peel.rows.map(() => 0);
  mesh.rows.forEach((indices, point) => {
    for (const index of indices) opening2[index] = model.gap(z15, point) - (history.start[index] ?? 0);
  });
  const reading = model.reading(z15);
  if (!(reading.displacement >= 0 && Number.isFinite(reading.load))) return void 0;
  const arms2 = armState(peel, z15, steps);
  const rows = rowState(peel, history, holding, mesh.at, z15);
  return {
    release: "release" in control ? control.release : reading.release,
    displacement: "displacement" in control ? control.displacement : reading.displacement,
    load: reading.load,
    byLoad: reading.byLoad,
    bedEnergy: reading.bedEnergy,
    length: length2,
    at: mesh.at,
    z: z15,
    opening: opening2,
    frontGap: model.gap(z15, 0),
    elastic: arms2.energy + reading.bedEnergy + rows.held,
    thread: rows.thread,
    zone: rows.zone,
    turn: model.places.reduce((most5, { angle: angle2 }) => Math.max(most5, Math.abs(z15[angle2] ?? 0)), 0),
    strain: arms2.strain,
    strainShare: arms2.share
  };
}
function held2({ rows }, { memory, start }, index) {
  const law = rows[index]?.law;
  const past = memory[index];
  const from = start[index];
  if (law === void 0 || past === void 0 || from === void 0 || isSpent(law, past)) return void 0;
  return { law, memory: past, start: from };
}

// packages/core/src/fracture/peel-step.ts
var near3 = 1e-6;
function stepTowards(peel, history, from, target, earlier) {
  const state = equilibrium(peel, history, target, from, earlier);
  if (state === void 0) return void 0;
  if (excess(peel, history, state).by <= 0) return done(peel, history, state);
  const found = search(peel, history, from, state, (one) => excess(peel, history, one).by);
  if (found === void 0) return void 0;
  const { row } = excess(peel, history, found);
  const after = done(peel, history, found);
  return row === void 0 ? { ...after, armBroken: true } : startDrop(peel, after, row);
}
function stepStill(peel, history, from, displacement, earlier) {
  const { length: length2 } = from;
  const state = equilibrium(peel, history, { length: length2, displacement }, from, earlier);
  if (state === void 0 || from.release >= 1 && state.release >= 1) return void 0;
  const full2 = from.release >= 1;
  const over2 = (one) => {
    const { by: by2 } = excess(peel, history, one);
    return full2 ? by2 : Math.max(by2, one.release - 1);
  };
  if (over2(state) <= 0) return { ...done(peel, history, state), stuck: true };
  const found = search(peel, history, from, state, over2, true);
  if (found === void 0) return void 0;
  const { row, by } = excess(peel, history, found);
  if (!full2 && by < found.release - 1) {
    const free = equilibrium(peel, history, { length: length2, release: 1 }, found);
    return free && done(peel, history, free);
  }
  const after = done(peel, history, found);
  return row === void 0 ? { ...after, armBroken: true } : startDrop(peel, after, row);
}
function startDrop(peel, { state, history }, row) {
  const kept3 = withRow(peel, history, row, (law, memory) => clamped2(law, memory, state.opening[row] ?? 0));
  return { state, history: kept3, drop: row, armBroken: false };
}
function stepDown(peel, history, from, row, targets) {
  const [law, memory] = [peel.rows[row]?.law, history.memory[row]];
  if (law === void 0 || memory?.clamp === void 0) return void 0;
  const end2 = afterDrop(law, memory);
  const { clamp } = memory;
  for (const target of targets) {
    const state = equilibrium(peel, history, target, from);
    const force = state === void 0 ? clamp.force : forceAt(state, row, memory, clamp);
    if (state === void 0 || force >= clamp.force) continue;
    if (force > end2) {
      const opening2 = state.opening[row] ?? memory.opening;
      const eased = withRow(peel, history, row, () => ({ ...memory, opening: opening2, clamp: { ...clamp, force } }));
      return { ...done(peel, eased, state), drop: row };
    }
    const still = "displacement" in target;
    const found = search(peel, history, from, state, (one) => forceAt(one, row, memory, clamp) - end2, still);
    return found && done(peel, withRow(peel, history, row, dropped), found);
  }
  return void 0;
}
var forceAt = (state, row, { opening: opening2 }, { force, stiffness: stiffness2 }) => force + stiffness2 * ((state.opening[row] ?? 0) - opening2);
function nextStop(peel, { start }, length2, limit5) {
  let next = limit5;
  peel.rows.forEach(({ position }, row) => {
    if (start[row] === void 0 && position > length2) next = Math.min(next, position);
  });
  return next;
}
function excess(peel, { memory }, state) {
  let worst2 = { by: state.strainShare - 1 };
  peel.rows.forEach(({ law }, row) => {
    const { stage: number7 = 0, clamp } = memory[row] ?? {};
    const stage = law.stages[number7];
    if (stage?.drops !== true || clamp !== void 0) return;
    const by = (state.opening[row] ?? 0) / stage.to - 1;
    if (by > worst2.by) worst2 = { by, row };
  });
  return worst2;
}
function search(peel, history, from, to, of, byDisplacement = false) {
  const states = /* @__PURE__ */ new Map([
    [0, from],
    [1, to]
  ]);
  const [r0, r1] = [Math.sqrt(from.release), Math.sqrt(to.release)];
  let lost = false;
  const between4 = (t) => {
    const length2 = from.length + t * (to.length - from.length);
    if (byDisplacement) return { length: length2, displacement: from.displacement + t * (to.displacement - from.displacement) };
    return { length: length2, release: r0 === r1 ? to.release : (r0 + t * (r1 - r0)) ** 2 };
  };
  const value = (t) => {
    let state = states.get(t);
    if (state === void 0) {
      state = equilibrium(peel, history, between4(t), to, from);
    }
    if (state === void 0) {
      lost = true;
      return 0;
    }
    states.set(t, state);
    return of(state);
  };
  const at4 = rootBetween(value, 0, 1, near3);
  return lost ? void 0 : states.get(at4);
}
function done(peel, history, state) {
  const memory = peel.rows.map(({ law }, row) => {
    const past = history.memory[row] ?? untouched;
    return history.start[row] === void 0 ? past : remember(law, past, state.opening[row] ?? 0);
  });
  const start = peel.rows.map(({ position }, row) => {
    const before2 = history.start[row];
    return before2 === void 0 && state.release >= 1 && state.length >= position ? state.frontGap : before2;
  });
  return { state, history: { memory, start }, armBroken: false };
}
function withRow(peel, history, row, change) {
  const memory = history.memory.map((past, i) => {
    const law = peel.rows[i]?.law;
    return i === row && law !== void 0 ? change(law, past) : past;
  });
  return { ...history, memory };
}

// packages/core/src/fracture/peel-path.ts
var loadingStep = 0.1;
var pullingStep = 0.05;
var misfit = 5e-4;
var smallest = 2 ** -16;
var mostRelease = 1e6;
var mostPoints = 5e4;
var near4 = 1e-6;
function followPeel(peel, limits2) {
  let history = {
    memory: peel.rows.map(() => untouched),
    start: peel.rows.map(() => void 0)
  };
  const points4 = [];
  const events = [];
  const gaveWay = /* @__PURE__ */ new Set();
  const giveWay = (row) => {
    if (gaveWay.has(row)) return;
    gaveWay.add(row);
    events.push({ kind: "row", row, point: points4.length - 1 });
  };
  const start = equilibrium(peel, history, { length: limits2.from, release: 1e-8 }, void 0);
  if (start === void 0) return { points: points4, events, end: "lost" };
  let current = start;
  points4.push(pointAt2(current, points4, limits2.from));
  let share2 = 1;
  let drop;
  let growing = false;
  let stuck = false;
  let earlier;
  while (points4.length < mostPoints) {
    if (!growing && current.release >= 1 && limits2.bondHolds !== true) {
      growing = true;
      events.push({ kind: "bond", point: points4.length - 1 });
    }
    if (current.length >= limits2.to) return { points: points4, events, end: "length" };
    if (current.displacement >= limits2.displacement) return { points: points4, events, end: "displacement" };
    if (drop === void 0) {
      const { row, by } = excess(peel, history, current);
      if (row !== void 0 && by > -near4) ({ history, drop } = startDrop(peel, { state: current, history }, row));
    }
    if (limits2.untilRow !== void 0 && current.load > limits2.untilRow.load) return { points: points4, events, end: "row" };
    if (limits2.untilRow !== void 0 && (drop !== void 0 || gaveWay.size > 0)) {
      if (drop !== void 0) giveWay(drop);
      return { points: points4, events, end: "row" };
    }
    if (current.release >= mostRelease) break;
    const step4 = attempt2(peel, history, { current, earlier, drop, stuck }, limits2, share2);
    const last = share2 <= smallest;
    const point = step4 === void 0 ? void 0 : pointAt2(step4.state, points4, limits2.from);
    const off = point === void 0 ? Number.POSITIVE_INFINITY : unbalanced2(points4.at(-1), point);
    if (step4 === void 0 || point === void 0 || off > misfit / limits2.refine && !last) {
      if (last) break;
      share2 /= 2;
      continue;
    }
    if (off < misfit / limits2.refine / 20) share2 = Math.min(1, share2 * 2);
    if (drop !== void 0) giveWay(drop);
    const sameWay = drop === void 0 && step4.drop === void 0 && stuck === (step4.stuck === true) && current.release >= 1 === step4.state.release > 1 - near4;
    earlier = sameWay ? current : void 0;
    ({ state: current, history, drop, stuck } = { drop: void 0, stuck: false, ...step4 });
    points4.push(point);
    peel.rows.forEach(({ law }, row) => {
      const memory = history.memory[row];
      if (memory !== void 0 && (memory.opening >= law.peak.opening || isSpent(law, memory))) giveWay(row);
    });
    if (step4.armBroken) {
      events.push({ kind: "arm", point: points4.length - 1 });
      return { points: points4, events, end: "arm" };
    }
  }
  return { points: points4, events, end: "lost" };
}
function attempt2(peel, history, { current, earlier, drop, stuck }, limits2, share2) {
  const { length: length2, release, displacement } = current;
  const part = share2 / limits2.refine;
  const grown = () => {
    const stop = nextStop(peel, history, length2, limits2.to);
    return { length: Math.min(length2 + limits2.growth * part, stop), release: 1 };
  };
  const root2 = Math.sqrt(Math.max(0, release));
  const held3 = limits2.bondHolds === true;
  const raisedRoot = root2 + loadingStep * part * (held3 ? Math.max(1, root2) : 1);
  const raised2 = { length: length2, release: raisedRoot > 1 - near4 && !held3 ? 1 : raisedRoot ** 2 };
  if (drop !== void 0) {
    const lowered = { length: length2, release: (root2 * (1 - loadingStep * part)) ** 2 };
    const closer2 = { length: length2, displacement: displacement * (1 - pullingStep * part) };
    return stepDown(
      peel,
      history,
      current,
      drop,
      release < 0 ? [closer2] : [release < 1 ? raised2 : grown(), lowered, closer2]
    );
  }
  const still = (size4) => stepStill(peel, history, current, displacement * (1 + pullingStep * size4), earlier);
  if (stuck) return still(part);
  const onward = stepTowards(peel, history, current, release < 1 || held3 ? raised2 : grown(), earlier);
  if (onward !== void 0 || held3) return onward;
  for (let size4 = part; size4 < 1; size4 *= 8) {
    const step4 = still(size4);
    if (step4 !== void 0) return step4;
  }
  return void 0;
}
function pointAt2(state, before2, from) {
  const { displacement, load, length: length2, byLoad, elastic: elastic2, thread, strain: strain2, strainShare, zone, turn } = state;
  return {
    displacement,
    load,
    length: length2,
    byLoad,
    work: (before2.at(-1)?.work ?? 0) + lastWork(before2, { displacement, load }),
    elastic: elastic2,
    bond: length2 - from,
    thread,
    strain: strain2,
    strainShare,
    zone,
    turn
  };
}
function unbalanced2(before2, after) {
  if (before2 === void 0) return 0;
  const work2 = after.work - before2.work;
  const elastic2 = after.elastic - before2.elastic;
  const bond = after.bond - before2.bond;
  const thread = after.thread - before2.thread;
  const moved = Math.abs(work2) + Math.abs(elastic2) + Math.abs(bond) + Math.abs(thread);
  const rounding4 = 1e-6 * (after.elastic + after.thread + after.bond);
  return Math.max(0, Math.abs(work2 - elastic2 - bond - thread) - rounding4) / moved;
}

// packages/core/src/fracture/specimen/resistance.ts
var apart = 1 / 400;
function resistanceOf(moments, width) {
  const first2 = moments[0]?.crackLength ?? 0;
  const least2 = ((moments.at(-1)?.crackLength ?? 0) - first2) * apart;
  const points4 = [];
  let from = moments[0];
  moments.forEach((moment, i) => {
    const next = moments[i + 1];
    if (from === void 0) return;
    const growth2 = moment.crackLength - from.crackLength;
    const jumps = next !== void 0 && next.crackLength - moment.crackLength >= least2 && next.released > moment.released;
    if (growth2 > 0 && (growth2 >= least2 || jumps || next === void 0)) {
      const spent = moment.work - from.work - (moment.stored - from.stored);
      points4.push({ growth: from.crackLength - first2, byLoad: from.byLoad, byArea: spent / (width * growth2) });
      from = moment;
    }
    if (next !== void 0 && next.crackLength > moment.crackLength && moment.crackLength === from.crackLength)
      from = moment;
  });
  return points4;
}

// packages/core/src/fracture/peel-record.ts
function peelRecord(path, { length: length2, force }, width) {
  const works = workAlong(path.points);
  const points4 = path.points.map((point, i) => ({ ...point, work: works[i] ?? point.work }));
  const moments = [];
  const displacement = [];
  let top = 0;
  let released = 0;
  let before2;
  let outside3 = false;
  let energyError = 0;
  for (const point of points4) {
    if (point.displacement >= top) {
      if (outside3 && before2 !== void 0) {
        const landing = between2(before2, point, top);
        released = (moments.at(-1)?.work ?? 0) - landing.work;
        moments.push({ ...landing, work: landing.work + released, released });
      }
      outside3 = false;
      top = point.displacement;
      moments.push({ ...point, work: point.work + released, released });
    } else {
      outside3 = true;
    }
    const given = outside3 ? moments.at(-1)?.work ?? 0 : point.work + released;
    const off = point.work - point.elastic - point.bond - point.thread;
    energyError = Math.max(energyError, Math.abs(off) / given);
    displacement.push(top * length2);
    before2 = point;
  }
  const energy2 = force * length2 * width;
  const states = moments.map(
    (one) => ({
      displacement: one.displacement * length2,
      load: one.load * force * width,
      crackLength: one.length * length2,
      work: one.work * energy2,
      elastic: one.elastic * energy2,
      bond: one.bond * energy2,
      thread: one.thread * energy2,
      ...one.released > 0 ? { released: one.released * energy2 } : {},
      armStrain: one.strain
    })
  );
  const resistance = resistanceOf(
    moments.map((moment, i) => {
      const { crackLength, work: work2, elastic: elastic2, released: released2 = 0 } = states[i];
      return { crackLength, byLoad: moment.byLoad * force, work: work2, stored: elastic2, released: released2 };
    }),
    width
  );
  return { states, resistance, displacement, energyError };
}
function between2(a, b, displacement) {
  const t = (displacement - a.displacement) / (b.displacement - a.displacement);
  const mix = (of) => of(a) + t * (of(b) - of(a));
  return {
    displacement,
    load: mix(({ load }) => load),
    length: mix((point) => point.length),
    byLoad: mix(({ byLoad }) => byLoad),
    work: mix(({ work: work2 }) => work2),
    elastic: mix(({ elastic: elastic2 }) => elastic2),
    bond: mix(({ bond }) => bond),
    thread: mix(({ thread }) => thread),
    strain: mix(({ strain: strain2 }) => strain2),
    strainShare: mix(({ strainShare }) => strainShare),
    zone: mix(({ zone }) => zone),
    turn: mix(({ turn }) => turn)
  };
}

// packages/core/src/fracture/peel-symmetric.ts
var [Y2, ANGLE2, M2, V2] = [0, 1, 2, 3];
var size = 4;
function symmetricPeel(arm2) {
  const { bend } = arm2.section;
  const { liftByMoment, liftByForce, turnByMoment } = arm2.bed;
  const section2 = emptySection();
  const sum5 = noForce();
  const one = noForce();
  const value = (z15, i) => z15[i] ?? 0;
  return {
    size,
    arms: [arm2],
    places: [{ y: Y2, angle: ANGLE2, moment: M2, V: V2 }],
    problem: (drive, holding) => ({
      size,
      left: "release" in drive ? 3 : 2,
      slope(z15, at4, f, J) {
        sectionAt(arm2.section, value(z15, at4 + ANGLE2), 0, value(z15, at4 + V2), section2);
        f[Y2] = section2.dy;
        f[ANGLE2] = bend * value(z15, at4 + M2);
        f[M2] = section2.dM;
        J[Y2 * size + ANGLE2] = section2.dyByAngle;
        J[Y2 * size + V2] = section2.dyByV;
        J[ANGLE2 * size + M2] = bend;
        J[M2 * size + ANGLE2] = section2.dMByAngle;
        J[M2 * size + V2] = section2.dMByV;
      },
      jump(point, z15, J) {
        const rows = holding[point];
        if (rows === void 0 || rows.length === 0) return false;
        pull(rows, 2 * value(z15, Y2), sum5, one);
        z15[V2] = value(z15, V2) + sum5.force;
        J[V2 * size + Y2] = 2 * sum5.slope;
        return true;
      },
      first(z15, at4, r, J) {
        const [m, q] = [value(z15, at4 + M2), value(z15, at4 + V2)];
        r[0] = value(z15, at4 + Y2) - liftByMoment * m - liftByForce * q;
        J[Y2] = 1;
        J[M2] = -liftByMoment;
        J[V2] = -liftByForce;
        r[1] = value(z15, at4 + ANGLE2) - turnByMoment * m - liftByMoment * q;
        J[size + ANGLE2] = 1;
        J[size + M2] = -turnByMoment;
        J[size + V2] = -liftByMoment;
        if (!("release" in drive)) return;
        sectionAt(arm2.section, value(z15, at4 + ANGLE2), 0, q, section2);
        r[2] = 2 * firstIntegral(bend, m, 0, q, section2) - drive.release;
        J[2 * size + M2] = 2 * bend * m;
        J[2 * size + ANGLE2] = -2 * section2.dM;
        J[2 * size + V2] = 2 * section2.dy;
      },
      last(z15, at4, r, J) {
        r[0] = value(z15, at4 + M2);
        J[M2] = 1;
        if (!("displacement" in drive)) return;
        r[1] = 2 * value(z15, at4 + Y2) - drive.displacement;
        J[size + Y2] = 2;
      }
    }),
    gap: (z15, point) => 2 * value(z15, point * size + Y2),
    reading(z15) {
      const at4 = z15.length - size;
      const load = value(z15, at4 + V2);
      sectionAt(arm2.section, value(z15, at4 + ANGLE2), 0, load, section2);
      const byLoad = 2 * firstIntegral(bend, 0, 0, load, section2);
      const [m, q] = [value(z15, M2), value(z15, V2)];
      sectionAt(arm2.section, value(z15, ANGLE2), 0, q, section2);
      return {
        release: 2 * firstIntegral(bend, m, 0, q, section2) * (value(z15, Y2) < 0 ? -1 : 1),
        load,
        displacement: 2 * value(z15, at4 + Y2),
        byLoad,
        bedEnergy: m * value(z15, ANGLE2) + q * value(z15, Y2)
      };
    },
    guess(release, length2, at4) {
      const moment = Math.sqrt(release / bend);
      const force = moment / length2;
      const z15 = new Float64Array(at4.length * size);
      at4.forEach((s, k) => {
        z15[k * size + Y2] = bend * force * (s * s * length2 / 2 - s ** 3 / 6);
        z15[k * size + ANGLE2] = bend * force * (s * length2 - s * s / 2);
        z15[k * size + M2] = force * (length2 - s);
        z15[k * size + V2] = force;
      });
      return z15;
    }
  };
}

// packages/core/src/fracture/peel-unequal.ts
var each = perArm;
var size2 = 2 * each;
function unequalPeel(upper, lower) {
  const arms2 = [upper, lower];
  const section2 = emptySection();
  const sum5 = noForce();
  const one = noForce();
  const value = (z15, i) => z15[i] ?? 0;
  const across2 = (z15, at4) => value(z15, at4 + X) - value(z15, at4 + each + X);
  const apart2 = (z15, at4) => value(z15, at4 + Y) + value(z15, at4 + each + Y);
  return {
    size: size2,
    arms: arms2,
    places: [0, each].map((o) => ({ y: o + Y, angle: o + ANGLE, moment: o + M, H: o + H, V: o + V })),
    problem: (drive, holding) => ({
      size: size2,
      left: "release" in drive ? 7 : 6,
      slope(z15, at4, f, J) {
        arms2.forEach((arm2, k) => {
          armSlope(arm2.section, z15, at4, k * each, size2, f, J, section2);
        });
      },
      jump(point, z15, J) {
        const rows = holding[point];
        if (rows === void 0 || rows.length === 0) return false;
        const dx = across2(z15, 0);
        const dy = apart2(z15, 0);
        const gap = Math.hypot(dx, dy);
        if (gap === 0) return false;
        pull(rows, gap, sum5, one);
        const [ex, ey] = [dx / gap, dy / gap];
        const { force, slope } = sum5;
        const stiff = force / gap;
        const xx = slope * ex * ex + stiff * ey * ey;
        const xy = (slope - stiff) * ex * ey;
        const yy = slope * ey * ey + stiff * ex * ex;
        for (const [o, sign2] of [
          [0, 1],
          [each, -1]
        ]) {
          z15[o + H] = value(z15, o + H) + sign2 * force * ex;
          z15[o + V] = value(z15, o + V) + force * ey;
          const h = (o + H) * size2;
          const v = (o + V) * size2;
          J[h + X] = sign2 * xx;
          J[h + each + X] = -sign2 * xx;
          J[h + Y] = sign2 * xy;
          J[h + each + Y] = sign2 * xy;
          J[v + X] = xy;
          J[v + each + X] = -xy;
          J[v + Y] = yy;
          J[v + each + Y] = yy;
        }
        return true;
      },
      first(z15, at4, r, J) {
        let released = 0;
        arms2.forEach(({ section: compliance, bed }, k) => {
          const o = k * each;
          const [m, q] = [value(z15, at4 + o + M), value(z15, at4 + o + V)];
          const row = (i) => (3 * k + i) * size2 + o;
          r[3 * k] = value(z15, at4 + o + X);
          J[row(0) + X] = 1;
          r[3 * k + 1] = value(z15, at4 + o + Y) - bed.liftByMoment * m - bed.liftByForce * q;
          J[row(1) + Y] = 1;
          J[row(1) + M] = -bed.liftByMoment;
          J[row(1) + V] = -bed.liftByForce;
          r[3 * k + 2] = value(z15, at4 + o + ANGLE) - bed.turnByMoment * m - bed.liftByMoment * q;
          J[row(2) + ANGLE] = 1;
          J[row(2) + M] = -bed.turnByMoment;
          J[row(2) + V] = -bed.liftByMoment;
          if (!("release" in drive)) return;
          const h = value(z15, at4 + o + H);
          sectionAt(compliance, value(z15, at4 + o + ANGLE), h, q, section2);
          released += firstIntegral(compliance.bend, m, h, q, section2) - h;
          const last = 6 * size2 + o;
          J[last + ANGLE] = -section2.dM;
          J[last + M] = compliance.bend * m;
          J[last + H] = section2.dx - 1;
          J[last + V] = section2.dy;
        });
        if ("release" in drive) r[6] = released - drive.release;
      },
      last(z15, at4, r, J) {
        r[0] = value(z15, at4 + M);
        J[M] = 1;
        r[1] = value(z15, at4 + each + M);
        J[size2 + each + M] = 1;
        r[2] = value(z15, at4 + H) + value(z15, at4 + each + H);
        J[2 * size2 + H] = 1;
        J[2 * size2 + each + H] = 1;
        r[3] = value(z15, at4 + V) - value(z15, at4 + each + V);
        J[3 * size2 + V] = 1;
        J[3 * size2 + each + V] = -1;
        const row = 4 * size2;
        const dx = across2(z15, at4);
        const dy = apart2(z15, at4);
        const [h, v] = [value(z15, at4 + H), value(z15, at4 + V)];
        r[4] = h * dy - v * dx;
        J[row + H] = dy;
        J[row + V] = -dx;
        J[row + Y] = h;
        J[row + each + Y] = h;
        J[row + X] = -v;
        J[row + each + X] = v;
        if (!("displacement" in drive)) return;
        const distance2 = Math.hypot(dx, dy);
        r[5] = distance2 - drive.displacement;
        J[5 * size2 + X] = dx / distance2;
        J[5 * size2 + each + X] = -dx / distance2;
        J[5 * size2 + Y] = dy / distance2;
        J[5 * size2 + each + Y] = dy / distance2;
      }
    }),
    gap: (z15, point) => Math.hypot(across2(z15, point * size2), apart2(z15, point * size2)),
    reading(z15) {
      const at4 = z15.length - size2;
      const dx = across2(z15, at4);
      const dy = apart2(z15, at4);
      const displacement = Math.hypot(dx, dy);
      let [byLoad, bedEnergy, released] = [0, 0, 0];
      arms2.forEach(({ section: compliance }, k) => {
        const o = k * each;
        const h = value(z15, at4 + o + H);
        sectionAt(compliance, value(z15, at4 + o + ANGLE), h, value(z15, at4 + o + V), section2);
        byLoad += firstIntegral(compliance.bend, 0, h, value(z15, at4 + o + V), section2) - h;
        const [rootH, rootV] = [value(z15, o + H), value(z15, o + V)];
        sectionAt(compliance, value(z15, o + ANGLE), rootH, rootV, section2);
        released += firstIntegral(compliance.bend, value(z15, o + M), rootH, rootV, section2) - rootH;
        bedEnergy += (value(z15, o + M) * value(z15, o + ANGLE) + value(z15, o + V) * value(z15, o + Y)) / 2;
      });
      const load = displacement > 0 ? (value(z15, at4 + H) * dx + value(z15, at4 + V) * dy) / displacement : 0;
      return { release: apart2(z15, 0) < 0 ? -released : released, load, displacement, byLoad, bedEnergy };
    },
    guess(release, length2, at4) {
      const moment = Math.sqrt(2 * release / (upper.section.bend + lower.section.bend));
      const force = moment / length2;
      const z15 = new Float64Array(at4.length * size2);
      at4.forEach((s, k) => {
        arms2.forEach(({ section: { bend } }, i) => {
          const o = k * size2 + i * each;
          z15[o + X] = s;
          z15[o + Y] = bend * force * (s * s * length2 / 2 - s ** 3 / 6);
          z15[o + ANGLE] = bend * force * (s * length2 - s * s / 2);
          z15[o + M] = force * (length2 - s);
          z15[o + V] = force;
        });
      });
      return z15;
    }
  };
}

// packages/core/src/fracture/specimen/row-law.ts
var stiffening = 1e-9;
var atOnce = 1e-4;
function rowLaw({ curve, penetrations: penetrations2 }, name) {
  checkCurve(curve.opening, curve.force, name);
  const { opening: opening2, force } = fromNothing(curve, penetrations2);
  const area = new Float64Array(opening2.length);
  let [peak2, firm, stiffness2] = [0, 0, 0];
  for (let i = 1; i < opening2.length; i++) {
    const w = at(opening2, i);
    const F = at(force, i);
    area[i] = at(area, i - 1) + (w - at(opening2, i - 1)) * (F + at(force, i - 1)) / 2;
    if (F >= at(force, peak2)) peak2 = i;
    if (F > stiffness2 * (1 + stiffening) * w) [firm, stiffness2] = [i, F / w];
  }
  if (stiffness2 === 0) return void 0;
  let steepest2 = stiffness2;
  for (let i = 1; i <= firm; i++) {
    steepest2 = Math.max(steepest2, (at(force, i) - at(force, i - 1)) / (at(opening2, i) - at(opening2, i - 1)));
  }
  let least2 = stiffness2;
  for (let i = firm + 1; i < opening2.length; i++) {
    const secant = at(force, i) / at(opening2, i);
    if (secant > least2 * (1 + stiffening)) stiffens(name, at(opening2, i));
    least2 = secant;
  }
  const end2 = at(opening2, opening2.length - 1);
  return {
    opening: opening2,
    force,
    area,
    firm: at(opening2, firm),
    stiffness: stiffness2,
    steepest: steepest2,
    straight: firm === 1,
    peak: at(opening2, peak2),
    end: end2
  };
}
function fromNothing(curve, penetrations2) {
  const opening2 = [...curve.opening];
  const force = curve.force.map((one) => one * penetrations2);
  if (opening2[1] === 0 && force[0] === 0) {
    opening2.shift();
    force.shift();
  }
  if ((force[0] ?? 0) > 0) {
    opening2[0] = Math.min(atOnce * (opening2.at(-1) ?? 0), (opening2[1] ?? 0) / 2);
    opening2.unshift(0);
    force.unshift(0);
  }
  return { opening: Float64Array.from(opening2), force: Float64Array.from(force) };
}
function at(list, i) {
  return list[i];
}
function before(opening2, w) {
  let low = 0;
  let high = opening2.length - 1;
  while (high - low > 1) {
    const middle = low + high >> 1;
    if (at(opening2, middle) < w) low = middle;
    else high = middle;
  }
  return low;
}
function slopeOf({ opening: opening2, force, end: end2 }, w) {
  if (w > end2) return 0;
  const i = before(opening2, w);
  return (at(force, i + 1) - at(force, i)) / (at(opening2, i + 1) - at(opening2, i));
}
function forceOf(law, w) {
  if (w > law.end || w <= 0) return 0;
  const { opening: opening2, force } = law;
  const i = before(opening2, w);
  const share2 = (w - at(opening2, i)) / (at(opening2, i + 1) - at(opening2, i));
  return at(force, i) + share2 * (at(force, i + 1) - at(force, i));
}
function leftAt(law, m) {
  return m > law.firm ? forceOf(law, m) / (m * law.stiffness) : 1;
}
function forceAfter(law, w, m) {
  if (w <= 0 || m > law.end) return 0;
  if (w > m) return forceOf(law, w);
  return leftAt(law, m) * (w > law.firm ? law.stiffness * w : forceOf(law, w));
}
function slopeAfter(law, w, m) {
  if (w <= 0) return 0;
  if (w >= m) return slopeOf(law, w);
  return leftAt(law, m) * (w > law.firm ? law.stiffness : slopeOf(law, w));
}
function areaAt({ opening: opening2, force, area, end: end2 }, w) {
  if (w > end2) return at(area, area.length - 1);
  const i = before(opening2, w);
  const step4 = w - at(opening2, i);
  const slope = (at(force, i + 1) - at(force, i)) / (at(opening2, i + 1) - at(opening2, i));
  return at(area, i) + step4 * (at(force, i) + slope * step4 / 2);
}
function storedAfter(law, w, m) {
  if (w <= 0 || m > law.end) return 0;
  const beyond = Math.max(0, w * w - law.firm * law.firm);
  return leftAt(law, m) * (areaAt(law, Math.min(w, law.firm)) + law.stiffness * beyond / 2);
}
function lostAt(law, m) {
  return m > law.firm ? areaAt(law, m) - storedAfter(law, m, m) : 0;
}
function checkCurve(opening2, force, name) {
  const wrong = (what) => fail({
    code: "out-of-range",
    message: `curve of ${name}: ${what}`,
    allowed: "two points or more from opening 0, openings that never fall, forces not below 0"
  });
  if (opening2.length !== force.length) wrong(`${opening2.length} openings for ${force.length} forces`);
  if (opening2.length < 2) wrong(`points = ${opening2.length}, must be at least 2`);
  if (opening2[0] !== 0) wrong(`starts at opening ${opening2[0]} m, must be 0`);
  if (!((opening2.at(-1) ?? 0) > 0)) wrong("longest opening = 0 m, must be above 0");
  opening2.forEach((value, i) => {
    const last = opening2[i - 1] ?? 0;
    const F = force[i] ?? 0;
    if (!(value >= last && value < 1e6)) wrong(`opening = ${value} m after ${last} m, must not fall`);
    if (!(F >= 0 && F < 1e15)) wrong(`force = ${F} N, must be finite and not below 0`);
  });
}
function stiffens(name, opening2) {
  fail({
    code: "not-admissible",
    message: `curve of ${name} stiffens again up to opening ${opening2} m: a thread that has begun to fail would give energy back`,
    allowed: "force over opening that never rises past its greatest value",
    hint: "smooth the part of the curve past its steepest line from the origin"
  });
}

// packages/core/src/fracture/specimen/check.ts
function requireInside(name, place, end2, of) {
  if (place > 0 && place < end2) return;
  fail({
    code: "out-of-range",
    message: `${name} = ${inMillimetres(place)}, must be above 0 and below ${of} of ${inMillimetres(end2)}`,
    allowed: `above 0, below ${inMillimetres(end2)}`
  });
}
function checkArms(arms2) {
  arms2.forEach((arm2, i) => {
    const of = (what) => `${what} of arm ${i + 1}`;
    requirePositive(of("thickness"), arm2.thickness, inMillimetres);
    requirePositive(of("bendingStiffness"), arm2.bendingStiffness, (value) => `${value} N m`);
    requirePositive(of("axialStiffness"), arm2.axialStiffness, (value) => `${value} N/m`);
    requirePositive(of("shearStiffness"), arm2.shearStiffness, (value) => `${value} N/m`);
    requirePositive(of("E3"), arm2.E3, (value) => `${value} Pa`);
    if (arm2.failureStrain === void 0) return;
    requirePositive(of("failure strain in tension"), arm2.failureStrain.tension);
    requirePositive(of("failure strain in compression"), arm2.failureStrain.compression);
  });
}
function modelRows(rows, length2, of) {
  const made = rows.flatMap((row, index) => {
    const name = `row ${index + 1}`;
    requireInside(`position of ${name}`, row.position, length2, of);
    requirePositive(`penetrations of ${name}`, row.penetrations);
    const law = rowLaw(row, name);
    return law === void 0 ? [] : [{ place: row.position, law, failure: row.failure, index }];
  });
  return made.sort((a, b) => a.place - b.place);
}
function breakingStrain({ failureStrain: failureStrain2 }) {
  return failureStrain2 === void 0 ? Number.POSITIVE_INFINITY : Math.min(failureStrain2.tension, failureStrain2.compression);
}
function requireFriction(friction) {
  if (friction >= 0 && friction <= 2) return;
  fail({ code: "out-of-range", message: `friction = ${friction}, must be 0 to 2`, allowed: "0 to 2" });
}
function requireRefine(refine) {
  if (refine >= 1 && refine <= 100) return;
  fail({ code: "out-of-range", message: `refine = ${refine}, must be 1 to 100`, allowed: "1 to 100" });
}

// packages/core/src/fracture/specimen/plan.ts
function planOf({ until, refine = 1, crackLength }, end2) {
  const displacement = until?.displacement ?? Number.POSITIVE_INFINITY;
  const wanted = until?.crackLength ?? end2;
  if (displacement !== Number.POSITIVE_INFINITY)
    requirePositive("displacement at the end", displacement, inMillimetres);
  requireRefine(refine);
  const longest = Math.min(wanted, end2);
  if (!(longest > crackLength)) {
    fail({
      code: "out-of-range",
      message: `crackLength = ${inMillimetres(crackLength)}, must be below the ${inMillimetres(longest)} at which the test ends`,
      allowed: `below ${inMillimetres(longest)}`,
      hint: "a longer bond leaves room for growth"
    });
  }
  return { crackLength, displacement, refine, longest };
}

// packages/core/src/fracture/peel-specimen.ts
var left = 4;
var perRow = 12;
var overall = 40;
var fineness = 3;
var alike4 = (a, b) => a.bendingStiffness === b.bendingStiffness && a.axialStiffness === b.axialStiffness && a.shearStiffness === b.shearStiffness && a.E3 === b.E3 && a.thickness === b.thickness && a.failureStrain?.tension === b.failureStrain?.tension && a.failureStrain?.compression === b.failureStrain?.compression;
var hasLikeArms = ({ arms: [upper, lower] }) => alike4(upper, lower);
function preparePeel(specimen) {
  const { arms: arms2, width, crackLength, length: length2, bondToughness, refine = 1 } = specimen;
  checkArms(arms2);
  requirePositive("width", width, inMillimetres);
  requirePositive("length", length2, inMillimetres);
  requirePositive("bondToughness", bondToughness, (value) => `${value} J/m\xB2`);
  const end2 = length2 - left * Math.max(...arms2.map(bedLength));
  requireInside("crackLength", crackLength, length2, "length");
  const plan = planOf(specimen, end2);
  const rows = modelRows(specimen.rows, length2, "length").filter(({ place }) => place >= crackLength);
  const units2 = naturalUnits(arms2[0], bondToughness);
  const [upper, lower] = [naturalArm(arms2[0], units2), naturalArm(arms2[1], units2)];
  const same4 = hasLikeArms(specimen);
  const peelRows = rows.map(({ place, law }) => ({
    position: place / units2.length,
    law: rowStages(law, units2.length, units2.force * width)
  }));
  const to = plan.longest / units2.length;
  const from = crackLength / units2.length;
  return {
    peel: {
      model: same4 ? symmetricPeel(upper) : unequalPeel(upper, lower),
      rows: peelRows,
      limits: (same4 ? [arms2[0]] : arms2).map(({ thickness, failureStrain: failureStrain2 }) => ({
        half: thickness / (2 * units2.length),
        tension: failureStrain2?.tension ?? Number.POSITIVE_INFINITY,
        compression: failureStrain2?.compression ?? Number.POSITIVE_INFINITY
      })),
      fineness: fineness * refine
    },
    limits: {
      from,
      to,
      growth: Math.min((to - from) / overall, spacing(peelRows, from, to) / perRow),
      displacement: plan.displacement / units2.length,
      refine
    },
    units: units2,
    rows
  };
}
function spacing(rows, from, to) {
  const met = [...new Set(rows.map(({ position }) => position).filter((place) => place > from && place < to))];
  if (met.length < 2) return to - from;
  return (Math.max(...met) - Math.min(...met)) / (met.length - 1);
}

// packages/core/src/fracture/peel-verdict.ts
var farthest2 = 100;
function peelVerdict(prepared2, path, width) {
  const { peel, limits: limits2 } = prepared2;
  const whole2 = path.events.length > 0 ? path : followPeel(peel, { ...limits2, displacement: Number.POSITIVE_INFINITY });
  const first2 = limitedBy(prepared2, whole2) ?? onset(whole2);
  const limit5 = { first: first2.kind, load: first2.load * prepared2.units.force * width };
  const grown = whole2.events.some(({ kind: kind2 }) => kind2 === "bond");
  if (!(first2.load > 0) || !canFail(prepared2, first2.kind) && grown) return limit5;
  const again = followPeel(without(prepared2, first2.kind), {
    ...limits2,
    ...first2.kind === "bond" ? { bondHolds: true } : {},
    displacement: Number.POSITIVE_INFINITY,
    untilRow: { load: farthest2 * first2.load }
  });
  const next = limitedBy(prepared2, again) ?? (grown ? void 0 : onset(again));
  return next === void 0 ? limit5 : { ...limit5, next: next.kind, margin: next.load / first2.load };
}
function canFail({ peel, rows }, besides) {
  const arms2 = peel.limits.some(({ tension, compression }) => Number.isFinite(Math.min(tension, compression)));
  return arms2 && besides !== "arm" || besides !== "bond" && rows.some(({ failure: failure2 }) => failure2 !== besides);
}
function limitedBy({ rows }, { events, points: points4 }) {
  const loads = events.flatMap((event) => {
    const kind2 = kindOf(event, (row) => rows[row]?.failure);
    return kind2 === void 0 ? [] : [{ kind: kind2, load: Math.max(...points4.slice(0, event.point + 1).map((one) => one.load)) }];
  });
  const arm2 = loads.find(({ kind: kind2 }) => kind2 === "arm");
  if (arm2 !== void 0) return arm2;
  return loads.reduce(
    (most5, one) => most5 === void 0 || one.load > most5.load ? one : most5,
    void 0
  );
}
function kindOf(event, failureOf) {
  if (event.kind === "arm") return "arm";
  return event.row === void 0 ? void 0 : failureOf(event.row);
}
function onset({ events, points: points4 }) {
  const bond = events.find(({ kind: kind2 }) => kind2 === "bond");
  return { kind: "bond", load: points4[bond?.point ?? -1]?.load ?? 0 };
}
function without({ peel, rows }, kind2) {
  if (kind2 === "bond") return peel;
  if (kind2 === "arm") {
    const endless3 = { tension: Number.POSITIVE_INFINITY, compression: Number.POSITIVE_INFINITY };
    return { ...peel, limits: peel.limits.map((limit5) => ({ ...limit5, ...endless3 })) };
  }
  return {
    ...peel,
    rows: peel.rows.map((row, i) => rows[i]?.failure === kind2 ? { ...row, law: unbreakable(row.law) } : row)
  };
}
var endless = 1e6;
function unbreakable(law) {
  const { stages, peak: peak2 } = law;
  const points4 = stages.flatMap(
    ({ opening: opening2, force: force2, area: area2 }) => opening2.map((w, i) => ({ w, f: force2[i] ?? 0, area: area2[i] ?? 0 }))
  );
  const top = points4.findIndex(({ w, f }) => f >= peak2.force && w >= peak2.opening * (1 - 1e-12));
  const rise2 = points4.slice(0, top + 1);
  const to = endless * peak2.opening;
  const force = endless * peak2.force;
  const before2 = rise2.at(-1);
  const area = (before2?.area ?? 0) + (peak2.force + force) / 2 * (to - peak2.opening);
  return {
    stages: [
      {
        opening: [...rise2.map(({ w }) => w), to],
        force: [...rise2.map(({ f }) => f), force],
        area: [...rise2.map((point) => point.area), area],
        from: 0,
        to,
        drops: false
      }
    ],
    firm: law.firm,
    peak: { force, opening: to },
    work: area
  };
}

// packages/core/src/fracture/simulate-peel.ts
var assumptions2 = [
  {
    level: "assumption",
    text: "The grips let the ends of the arms turn and pull them along one line; the arms are flat at the start."
  },
  {
    level: "assumption",
    text: "Arms are elastic up to their failure strain; the bond takes its toughness, whatever the share of sliding at the front."
  },
  {
    level: "assumption",
    text: "The penetrations of a row share its force, pull along the line between their two ends, unload along what is left of their elastic line, and hold from the moment the front passes them."
  },
  {
    level: "assumption",
    text: "Between two states that the grips can hold the specimen jumps; what that sets free breaks nothing more."
  }
];
var mostTurn = 0.2;
function simulatePeel(specimen) {
  const prepared2 = preparePeel(specimen);
  const { peel, limits: limits2, units: units2 } = prepared2;
  const path = followPeel(peel, limits2);
  const last = path.points.at(-1);
  if (path.end === "lost" || last === void 0) {
    const at4 = (last?.length ?? limits2.from) * units2.length;
    fail({
      code: "not-computable",
      message: `no equilibrium of the arms was found beyond a crack length of ${inMillimetres(at4)}`,
      allowed: "arms and rows whose stiffnesses a number of 64 bits can hold together"
    });
  }
  const { width } = specimen;
  const { states, resistance, displacement, energyError } = peelRecord(path, units2, width);
  return {
    states,
    events: eventsOf(prepared2, path, displacement, width),
    resistance,
    peakForce: Math.max(...states.map(({ load }) => load)),
    ...peel.limits.some(({ tension, compression }) => Number.isFinite(Math.min(tension, compression))) && {
      armShare: Math.max(...path.points.map(({ strainShare }) => strainShare))
    },
    zoneLength: Math.max(...path.points.map(({ zone }) => zone)) * units2.length,
    verdict: peelVerdict(prepared2, path, width),
    energyError,
    notes: notesOn3(specimen, path, energyError),
    sources: ["reissner-1972", "kinloch-lau-williams-1994", "kanninen-1973", "selvage-2026-derivation"]
  };
}
function eventsOf({ rows, units: units2 }, { events, points: points4 }, displacement, width) {
  return events.flatMap(({ kind: kind2, row, point }) => {
    const at4 = points4[point];
    const broken = row === void 0 ? void 0 : rows[row];
    const what = kind2 === "row" ? broken?.failure : kind2;
    if (at4 === void 0 || what === void 0) return [];
    return [
      {
        kind: what,
        load: at4.load * units2.force * width,
        displacement: displacement[point] ?? 0,
        crackLength: at4.length * units2.length,
        ...broken === void 0 ? {} : { row: broken.index },
        byLoad: at4.byLoad * units2.force
      }
    ];
  });
}
function notesOn3(specimen, path, energyError) {
  const notes4 = [...assumptions2];
  if (!hasLikeArms(specimen)) {
    notes4.push({
      level: "assumption",
      text: "The arms differ: the bonded part behind the front stays straight and is free to turn; each arm rests on its own bed."
    });
  }
  if (specimen.arms.some(({ failureStrain: failureStrain2 }) => failureStrain2 === void 0)) {
    notes4.push({ level: "assumption", text: "An arm without failure strain is not checked for breaking." });
  }
  const behind = specimen.rows.filter(({ position }) => position < specimen.crackLength).length;
  if (behind > 0) {
    notes4.push({
      level: "assumption",
      text: `${behind === 1 ? "One row lies" : `${behind} rows lie`} behind the front at the start and ${behind === 1 ? "is" : "are"} taken as cut.`
    });
  }
  const turn = Math.max(...path.points.map((point) => point.turn));
  if (turn > mostTurn) {
    notes4.push({
      level: "warning",
      text: `A bonded arm turns by ${turn.toFixed(2)} rad at the front, its bed holds to about ${mostTurn}: stubby arms, or a bond too tough for them.`
    });
  }
  if (energyError > 5e-3) {
    notes4.push({ level: "warning", text: `The energy balance is open by ${(100 * energyError).toFixed(1)} %.` });
  }
  return uniqueNotes(notes4);
}

// packages/core/src/fracture/specimen/bending.ts
function leftSupport({ span, loads }) {
  return loads.reduce((sum5, { place, share: share2 }) => sum5 + share2 * (span - place) / span, 0);
}
function momentAt(bending, place) {
  const { span, loads } = bending;
  if (place >= span || place <= 0) return 0;
  return loads.reduce((sum5, load) => sum5 - load.share * Math.max(0, place - load.place), leftSupport(bending) * place);
}

// packages/core/src/fracture/specimen/opening-pair.ts
function openingPair([one, two]) {
  const sum5 = (a, b) => 1 / (1 / a + 1 / b);
  const thickness = one.thickness + two.thickness;
  return {
    thickness,
    bendingStiffness: sum5(one.bendingStiffness, two.bendingStiffness),
    axialStiffness: sum5(one.axialStiffness, two.axialStiffness),
    shearStiffness: sum5(one.shearStiffness, two.shearStiffness),
    E3: thickness / (one.thickness / one.E3 + two.thickness / two.E3)
  };
}
function bedStiffness({ E3, thickness }) {
  return 2 * E3 / thickness;
}
function rootLength(pair2) {
  const { bendingStiffness: D, shearStiffness: S } = pair2;
  return Math.sqrt(D / S + 2 * Math.sqrt(D / bedStiffness(pair2)));
}

// packages/core/src/fracture/specimen/beam-toughness.ts
function openingRelease(pair2, width, load, crackLength) {
  return (load * (crackLength + rootLength(pair2))) ** 2 / (2 * width * width * pair2.bendingStiffness);
}
function openingCompliance(pair2, crackLength) {
  const chi = rootLength(pair2);
  const D = pair2.bendingStiffness;
  return ((crackLength + chi) ** 3 - chi ** 3) / (3 * D) + chi / Math.sqrt(bedStiffness(pair2) * D);
}
function naturalSplit(pair2, opening2, toughness3, longest) {
  const scale = Math.sqrt(2 * pair2.bendingStiffness * toughness3);
  const short = (a) => openingCompliance(pair2, a) * scale - opening2 * (a + rootLength(pair2));
  if (short(0) >= 0) return 0;
  return short(longest) <= 0 ? longest : rootBetween(short, 0, longest);
}
function slidingRelease(pair2, bending, width, load, crackLength) {
  const step4 = 1e-6 / pair2.decay;
  const here = momentAt(bending, crackLength);
  const slope = (here - momentAt(bending, crackLength - step4)) / step4;
  const moment = load * (here + slope / pair2.decay) / width;
  return moment * moment * (1 / pair2.D - 1 / pair2.bonded) / 2;
}

// packages/core/src/fracture/specimen/bed-element.ts
function freeStretch({ D, S }, length2) {
  const h = length2 / 2;
  const k = 1 / (h * h * h / (3 * D) + h / S);
  return { symmetric: [0, 0, D / h], opposed: [k, -h * k, h * h * k] };
}
function bedStretch({ D, S }, k, length2) {
  const h = length2 / 2;
  const product2 = Math.sqrt(k / D);
  const u = Math.sqrt(k / S + 2 * product2) / 2;
  const square2 = k / (4 * S) - product2 / 2;
  const v = Math.sqrt(Math.abs(square2));
  if (square2 > 0 && v * h > 1) {
    const [r1, r2] = [u + v, product2 / (u + v)];
    const odd2 = [Math.tanh(r1 * h), Math.tanh(r2 * h)];
    const T2 = [r1, 0, 0, r2];
    return { symmetric: endStiffness(T2, [1, 1], odd2, k, D), opposed: endStiffness(T2, odd2, [1, 1], k, D) };
  }
  const th = Math.tanh(u * h);
  const c = square2 > 0 ? Math.cosh(v * h) : Math.cos(v * h);
  const s = v * h < 1e-9 ? u * h : u / v * (square2 > 0 ? Math.sinh(v * h) : Math.sin(v * h));
  const T = [u, square2 / u, u, u];
  const even3 = [c, th * s];
  const odd = [th * c, s];
  return { symmetric: endStiffness(T, even3, odd, k, D), opposed: endStiffness(T, odd, even3, k, D) };
}
function endStiffness(T, E, O, k, D) {
  const times3 = ([a, b]) => [T[0] * a + T[1] * b, T[2] * a + T[3] * b];
  const TE = times3(E);
  const lift = times3(times3(TE));
  const turn = [-k / D * O[0], -k / D * O[1]];
  const force = times3(times3(O));
  const det = lift[0] * turn[1] - lift[1] * turn[0];
  const k11 = k * (turn[1] * force[0] - turn[0] * force[1]) / det;
  const k12 = k * (lift[0] * force[1] - lift[1] * force[0]) / det;
  const k22 = -k * (lift[0] * TE[1] - lift[1] * TE[0]) / det;
  return [k11, k12, k22];
}

// packages/core/src/fracture/specimen/chain.ts
function placesOf(fixed, rows, length2) {
  const same4 = 1e-9 * length2;
  const at4 = [];
  for (const place of [...fixed, ...rows].sort((a, b) => a - b)) {
    if (at4.length === 0 || place - (at4.at(-1) ?? 0) > same4) at4.push(place);
  }
  const ofRow = rows.map((row) => at4.findIndex((place) => Math.abs(place - row) <= same4));
  return { at: at4, ofRow };
}
function tipAmong({ at: at4 }, tip, near5) {
  let low = 0;
  let high = at4.length;
  while (low < high) {
    const middle = low + high >> 1;
    if (at4[middle] < tip - near5) low = middle + 1;
    else high = middle;
  }
  return { before: low, on: low < at4.length && at4[low] <= tip + near5 };
}

// packages/core/src/fracture/specimen/opening-chain.ts
var band = 3;
var stride = band + 1;
var quiet = 12;
function openingChain(pair2, width, length2, rows) {
  const beam = { D: pair2.bendingStiffness, S: pair2.shearStiffness };
  const k = bedStiffness(pair2);
  const places = placesOf([0, length2], rows, length2);
  const { at: at4, ofRow } = places;
  const end2 = at4.length - 1;
  const gaps = at4.slice(1).map((place, i) => place - (at4[i] ?? 0));
  const bonded = gaps.map((gap) => bedStretch(beam, k, gap));
  const open = gaps.map((gap) => freeStretch(beam, gap));
  const most5 = 2 * (at4.length + 1);
  const K = new Float64Array((most5 + band) * stride);
  const load = new Float64Array(most5 + band);
  const row = Int32Array.from(ofRow, (place) => 2 * (end2 - place));
  const root2 = rootLength(pair2);
  const still = quiet * bedLength(pair2);
  const laid = {
    unknowns: 0,
    settled: 0,
    loaded: 0,
    felt: 0,
    first: 0,
    beyond: 0,
    tip: 0,
    next: 0,
    direct: 0
  };
  let nextPlace = 0;
  let crack = Number.NaN;
  const lay = (tip, spent) => {
    if (tip === crack && spent === laid.first) return laid;
    const { before: before2, on } = tipAmong(places, tip, Math.max(3e-4 * root2, 3e-5 * tip));
    const ahead = end2 - before2;
    let point = Math.min(ahead, laid.settled / 2);
    K.fill(0, 2 * point * stride, (laid.unknowns + band) * stride);
    if (point > 0) addNear(K, point, bonded[end2 - point], width);
    const add = (ends2) => {
      addFar(K, point, ends2, width);
      point += 1;
      addNear(K, point, ends2, width);
    };
    while (point < ahead) add(bonded[end2 - point - 1]);
    if (!on) add(bedStretch(beam, k, at4[before2] - tip));
    const tipPoint = point;
    const held3 = Math.min(Math.max(ofRow[spent] ?? end2, 1), before2);
    let place = on ? at4[before2] : tip;
    for (let i = before2 - 1; i >= held3; i--) {
      add(on || i < before2 - 1 ? open[i] : freeStretch(beam, place - at4[i]));
      place = at4[i];
    }
    add(freeStretch(beam, place));
    load[laid.loaded] = 0;
    laid.loaded = 2 * point;
    load[laid.loaded] = 1;
    laid.unknowns = laid.loaded + 2;
    laid.tip = 2 * tipPoint;
    laid.next = laid.loaded - 2;
    nextPlace = place;
    let last = before2;
    while (last < end2 && at4[last] < tip + still) last++;
    laid.felt = 2 * (end2 - last);
    const reached = Math.max(before2, end2 - laid.settled / 2);
    laid.settled = 2 * ahead;
    laid.first = spent;
    let j = spent;
    for (; j < row.length && ofRow[j] <= reached; j++) {
      const own2 = ofRow[j];
      row[j] = own2 === 0 ? laid.loaded : 2 * (own2 < before2 ? tipPoint + before2 - own2 : end2 - own2);
    }
    while (j > spent && ofRow[j - 1] > last) j--;
    while (j < row.length && ofRow[j] <= last) j++;
    laid.beyond = j;
    crack = tip;
    return laid;
  };
  const fill = (opening2, P, displacement, next) => {
    const bend = P / (6 * beam.D * width);
    const slope = (next - displacement) / nextPlace - bend * nextPlace * nextPlace;
    for (let j = 0; j < laid.first; j++) {
      const x = rows[j];
      opening2[j] = displacement + x * (slope + bend * x * x);
    }
  };
  return { band, K, load, drive: load, row, rubs: [], lay, fill };
}
function addFar(K, point, { symmetric: s, opposed: a }, width) {
  const half = width / 2;
  const lift = 2 * point * stride;
  const slope = lift + stride;
  K[lift] = K[lift] + half * (s[0] + a[0]);
  K[lift + 1] = K[lift + 1] + half * (s[1] + a[1]);
  K[lift + 2] = half * (s[0] - a[0]);
  K[lift + 3] = half * (a[1] - s[1]);
  K[slope] = K[slope] + half * (s[2] + a[2]);
  K[slope + 1] = half * (s[1] - a[1]);
  K[slope + 2] = half * (a[2] - s[2]);
}
function addNear(K, point, { symmetric: s, opposed: a }, width) {
  const half = width / 2;
  const lift = 2 * point * stride;
  K[lift] = K[lift] + half * (s[0] + a[0]);
  K[lift + 1] = K[lift + 1] - half * (s[1] + a[1]);
  K[lift + stride] = K[lift + stride] + half * (s[2] + a[2]);
}

// packages/core/src/fracture/specimen/opening-strain.ts
function openingStrain({ arms: arms2, width }, rows) {
  const perMoment = arms2.map(({ thickness, bendingStiffness }) => thickness / (2 * bendingStiffness * width));
  const limits2 = arms2.map(breakingStrain);
  const strainLimit = Math.min(...limits2);
  const weights = perMoment.map(
    (one, i) => one * (limits2[i] === strainLimit ? 1 : strainLimit / limits2[i])
  );
  const worst2 = strainLimit === Number.POSITIVE_INFINITY ? Math.max(...perMoment) : Math.max(...weights);
  const strain2 = ({ load, crackLength, opening: opening2, largest: largest5 }) => {
    let force = load;
    let moment = 0;
    let place = 0;
    let most5 = 0;
    for (let j = 0; j < rows.length; j++) {
      const { place: next, law } = rows[j];
      if (next >= crackLength) break;
      moment += force * (next - place);
      most5 = Math.max(most5, Math.abs(moment));
      place = next;
      const w = opening2[j];
      const m = largest5[j];
      force -= forceAfter(law, w, m);
    }
    return worst2 * Math.max(most5, Math.abs(moment + force * (crackLength - place)));
  };
  return { strain: strain2, strainLimit };
}

// packages/core/src/fracture/specimen/energy.ts
function stored(model, { load, displacement, opening: opening2, largest: largest5, rubbed }) {
  let elastic2 = load * displacement / 2;
  let thread = 0;
  for (const { slid, force } of rubbed) elastic2 -= slid * force / 2;
  for (let j = 0; j < model.rows.length; j++) {
    const { law } = model.rows[j];
    const w = opening2[j];
    const m = largest5[j];
    thread += lostAt(law, m);
    elastic2 += storedAfter(law, w, m) - forceAfter(law, w, m) * w / 2;
  }
  return { elastic: elastic2, thread };
}

// packages/core/src/fracture/specimen/row-lines.ts
var exact = 1e-9;
var rounding3 = 1e-13;
var tiny = 1e-18;
function rowLines(rows) {
  const count = rows.length;
  const stiffness2 = new Float64Array(count);
  const constant = new Float64Array(count);
  const soft = new Uint8Array(count);
  const laws = rows.map(({ law }) => law);
  const nothing4 = Float64Array.from(laws, (law) => tiny * Math.max(...law.force));
  const firm = Float64Array.from(laws, (law) => law.firm);
  const elastic2 = Float64Array.from(laws, (law) => law.stiffness);
  const onLine = (j, wj, m) => wj > 0 && wj <= m && (wj > firm[j] || laws[j].straight);
  const draw = (w, largest5, way, { first: first2, beyond }, changed) => {
    const secant = way === "secant";
    let constants3 = false;
    for (let j = first2; j < beyond; j++) {
      const wj = w[j];
      const m = largest5[j];
      let k = 0;
      let c = 0;
      const opens = way === "careful" && wj > m && soft[j] === 1;
      soft[j] = wj > 0 && onLine(j, Math.min(wj, m), m) ? 0 : 1;
      if (opens || onLine(j, wj, m) && (secant || wj < m || m === firm[j])) {
        k = elastic2[j] * (m > firm[j] ? leftAt(laws[j], m) : 1);
      } else if (secant || wj > 0) {
        const law = laws[j];
        if (secant && wj > m) k = forceAfter(law, wj, m) / wj;
        else {
          k = secant ? leftAt(law, m) * law.steepest : slopeAfter(law, wj, m);
          c = forceAfter(law, wj, m) - k * wj;
        }
      }
      if (k !== stiffness2[j]) changed(j);
      stiffness2[j] = k;
      constant[j] = c;
      if (c !== 0) constants3 = true;
    }
    return constants3;
  };
  const meet = (w, largest5, { first: first2, beyond }) => {
    for (let j = first2; j < beyond; j++) {
      const wj = w[j];
      const m = largest5[j];
      if (m === firm[j] && stiffness2[j] === elastic2[j] && constant[j] === 0 && onLine(j, wj, m)) continue;
      const F = forceAfter(laws[j], wj, m);
      const rise2 = stiffness2[j] * wj;
      const c = constant[j];
      const allowed = exact * F + rounding3 * (Math.abs(rise2) + Math.abs(c)) + nothing4[j];
      if (!(Math.abs(F - rise2 - c) <= allowed)) return false;
    }
    return true;
  };
  return { stiffness: stiffness2, constant, draw, meet };
}

// packages/core/src/fracture/specimen/equilibrium.ts
var tangents = 8;
var secants = 24;
var mostTurns = 40;
function equilibriumOf(model) {
  const { chain, rows } = model;
  const { K, band: band3, load, drive, row, rubs } = chain;
  const stride3 = band3 + 1;
  const work2 = new Float64Array(K.length);
  const byLoad = new Float64Array(load.length);
  const byRows = new Float64Array(load.length);
  const count = rows.length;
  const { stiffness: stiffness2, constant, draw, meet } = rowLines(rows);
  const before2 = new Float64Array(count);
  const ends2 = Float64Array.from(rows, ({ law }) => law.end);
  let factored = 0;
  let settled2 = 0;
  let negative = 0;
  let lastCrack = Number.NaN;
  let lastSpent = 0;
  const changed = (j) => {
    factored = Math.min(factored, row[j]);
  };
  const solve = (laid, displacement, constants4) => {
    const { unknowns: n, loaded, felt, first: first2, beyond } = laid;
    const end2 = n + band3;
    for (let i = factored * stride3; i < end2 * stride3; i++) work2[i] = K[i];
    for (let j = first2; j < count; j++) {
      const at5 = row[j];
      if (at5 >= factored) work2[at5 * stride3] = work2[at5 * stride3] + stiffness2[j];
    }
    const kept3 = negative > 0 ? negativeAmong(work2, factored, stride3) : 0;
    const more = factorBanded(work2, n, band3, factored);
    negative = kept3 + more;
    factored = more < 0 ? 0 : n;
    if (more < 0 || negative > 1) return Number.NaN;
    byLoad.fill(0, felt, end2);
    for (let i = loaded; i < n; i++) byLoad[i] = load[i];
    solveBanded(work2, n, band3, byLoad, loaded, felt);
    let flexibility = laid.direct;
    for (let i = loaded; i < n; i++) flexibility += drive[i] * byLoad[i];
    if (flexibility > 0 !== (negative === 0)) return Number.NaN;
    if (!constants4) return displacement / flexibility;
    byRows.fill(0, felt, end2);
    let from = n;
    for (let j = first2; j < beyond; j++) {
      const c = constant[j];
      if (c === 0) continue;
      const at5 = row[j];
      byRows[at5] = byRows[at5] - c;
      from = Math.min(from, at5);
    }
    solveBanded(work2, n, band3, byRows, from, felt);
    let moved = displacement;
    for (let i = loaded; i < n; i++) moved -= drive[i] * byRows[i];
    return moved / flexibility;
  };
  let w = new Float64Array(count);
  let constants3 = false;
  let P = 0;
  const at4 = (unknown) => P * byLoad[unknown] + (constants3 ? byRows[unknown] : 0);
  const rounds = (most5, way, laid, displacement, largest5) => {
    for (let i = 0; i < most5; i++) {
      constants3 = draw(w, largest5, way, laid, changed);
      P = solve(laid, displacement, constants3);
      if (!Number.isFinite(P)) return false;
      for (let j = laid.first; j < laid.beyond; j++) w[j] = at4(row[j]);
      if (meet(w, largest5, laid)) return true;
    }
    return false;
  };
  const isSpent2 = (j, largest5) => largest5[j] > ends2[j];
  return (crackLength, displacement, largest5, guess) => {
    let spent = lastSpent;
    while (spent > 0 && !isSpent2(spent - 1, largest5)) spent--;
    while (spent < count && isSpent2(spent, largest5)) spent++;
    const laid = chain.lay(crackLength, spent);
    if (crackLength !== lastCrack || spent !== lastSpent) factored = Math.min(factored, settled2, laid.settled);
    lastCrack = crackLength;
    lastSpent = spent;
    settled2 = laid.settled;
    w = guess.slice();
    w.fill(0, laid.beyond);
    for (let turn = 1; turn <= mostTurns; turn++) {
      before2.set(w);
      let found = rounds(tangents, turn === 1 ? "careful" : "tangent", laid, displacement, largest5);
      if (!found) {
        w.set(before2);
        found = rounds(secants * turn, "secant", laid, displacement, largest5);
      }
      if (found) {
        const rubbed = rubs.map(({ unknown, perLoad }) => ({ slid: at4(unknown), force: perLoad * P }));
        chain.fill(w, P, displacement, at4(laid.next));
        return { crackLength, displacement, load: P, tip: at4(laid.tip), opening: w, largest: largest5, rubbed };
      }
    }
    return fail({
      code: "not-computable",
      message: `no equilibrium found at displacement ${displacement} m and crack length ${crackLength} m`,
      hint: "check the curves of the rows for forces or openings far outside those of the arms"
    });
  };
}
function negativeAmong(work2, rows, stride3) {
  let negative = 0;
  for (let i = 0; i < rows; i++) if (work2[i * stride3] < 0) negative++;
  return negative;
}

// packages/core/src/fracture/specimen/events.ts
function eventsOf2(model, from, { state, passings }, jump, grew) {
  const { load, displacement } = jump ? from : state;
  const rows = passings.flatMap(({ row, crackLength }) => {
    const one = model.rows[row];
    const seen = jump ? from.crackLength : crackLength;
    return one === void 0 ? [] : [{ kind: one.failure, load, displacement, crackLength, row: one.index, from: seen }];
  });
  const grows = state.crackLength > from.crackLength && (jump || !grew);
  if (!grows) return rows;
  const before2 = rows.filter(({ crackLength }) => crackLength <= from.crackLength);
  const bond = {
    kind: "bond",
    load: from.load,
    displacement: from.displacement,
    crackLength: from.crackLength,
    from: from.crackLength
  };
  return [...before2, bond, ...rows.slice(before2.length)];
}

// packages/core/src/fracture/specimen/proportional.ts
function proportionalLimit(model, state) {
  let factor = Number.POSITIVE_INFINITY;
  if (state.tip > 0) factor = model.tipLimit / state.tip;
  const strain2 = model.strain(state);
  if (strain2 > 0) factor = Math.min(factor, model.strainLimit / strain2);
  for (let j = 0; j < state.opening.length; j++) {
    const w = state.opening[j];
    if (w > 0 && (model.rows[j]?.law.end ?? 0) >= w) factor = Math.min(factor, state.largest[j] / w);
  }
  return factor;
}

// packages/core/src/fracture/specimen/record.ts
function recordOf(model, state, { elastic: elastic2, thread }, sums, firstCrack) {
  const { displacement, load, crackLength } = state;
  const growth2 = crackLength - firstCrack;
  return {
    displacement,
    load,
    crackLength,
    work: sums.work,
    elastic: elastic2,
    bond: growth2 > 0 ? model.bondWork * growth2 : 0,
    thread,
    ...model.chain.rubs.some(({ perLoad }) => perLoad > 0) && { friction: sums.friction },
    ...sums.released > 0 && { released: sums.released },
    armStrain: model.strain(state)
  };
}
function bridgedLength({ rows }, { crackLength, largest: largest5 }) {
  let zone = 0;
  rows.forEach(({ place, law }, j) => {
    if (place < crackLength && largest5[j] <= law.end) zone = Math.max(zone, crackLength - place);
  });
  return zone;
}
function overlapAtRows({ rows }, { crackLength, opening: opening2 }) {
  let deepest2 = 0;
  rows.forEach(({ place }, j) => {
    if (place < crackLength) deepest2 = Math.max(deepest2, -opening2[j]);
  });
  return deepest2;
}

// packages/core/src/fracture/specimen/settle.ts
var onTheLimit = 1e-8;
function settle(model, equilibrium2, from, displacement, stride3) {
  const limit5 = model.tipLimit * (1 + onTheLimit);
  const passings = [];
  let state = keep(model, equilibrium2(from.crackLength, displacement, from.largest, from.opening), passings);
  let piece = Math.min(stride3.first, stride3.longest);
  while (state.tip > limit5 && state.crackLength < model.longest) {
    if (state.crackLength - from.crackLength > stride3.enough) return { state, passings, complete: false };
    const next = Math.min(state.crackLength + piece, model.longest);
    const ahead = equilibrium2(next, displacement, state.largest, state.opening);
    state = keep(model, ahead.tip > limit5 ? ahead : backAtLimit(model, equilibrium2, state, ahead), passings);
    piece = Math.min(2 * piece, stride3.longest);
  }
  return { state, passings, complete: true };
}
function backAtLimit(model, equilibrium2, beyond, short) {
  const over2 = ({ tip }) => tip - model.tipLimit;
  let [a, fa] = [beyond.crackLength, over2(beyond)];
  let [b, fb] = [short.crackLength, over2(short)];
  let [c, fc] = [a, fa];
  let found = short;
  let x = a + fa / (fa - fb) * (b - a);
  let last = Math.max(fa, -fb);
  for (let round = 0; round < 60; round++) {
    if (Math.abs(over2(found)) <= onTheLimit * model.tipLimit || b - a <= 1e-12 * b) break;
    found = equilibrium2(x, beyond.displacement, beyond.largest, found.opening);
    const f = over2(found);
    const slow = Math.abs(f) > last / 2;
    last = Math.abs(f);
    if (f > 0) {
      [c, fc] = [a, fa];
      [a, fa] = [x, f];
    } else {
      [c, fc] = [b, fb];
      [b, fb] = [x, f];
    }
    const line = a + fa / (fa - fb) * (b - a);
    const bend = fa * fb / (fc - fb) * ((c - a) / (fc - fa) - (b - a) / (fb - fa));
    x = line + bend;
    if (!(x > a && x < b) || slow) x = (a + b) / 2;
  }
  return found;
}
function keep(model, state, passings) {
  const { opening: opening2, largest: before2 } = state;
  let largest5 = before2;
  for (let j = 0; j < opening2.length; j++) {
    const m = before2[j];
    const w = opening2[j];
    if (w <= m) continue;
    const { peak: peak2, end: end2 } = model.rows[j].law;
    if (m > end2) continue;
    if (largest5 === before2) largest5 = before2.slice();
    largest5[j] = w;
    if (m <= peak2 && w > peak2) passings.push({ row: j, crackLength: state.crackLength });
  }
  return largest5 === before2 ? state : { ...state, largest: largest5 };
}

// packages/core/src/fracture/specimen/step.ts
function stepEnergy(model, from, before2, to) {
  const after = stored(model, to);
  const work2 = (from.load + to.load) / 2 * (to.displacement - from.displacement);
  let friction = 0;
  to.rubbed.forEach(({ slid, force }, i) => {
    const last = from.rubbed[i];
    if (last !== void 0) friction += (last.force + force) / 2 * (slid - last.slid);
  });
  const bond = model.bondWork === Number.POSITIVE_INFINITY ? 0 : model.bondWork * (to.crackLength - from.crackLength);
  const off = work2 - friction - bond - (after.elastic - before2.elastic) - (after.thread - before2.thread);
  return { work: work2, friction, off, stored: after };
}

// packages/core/src/fracture/specimen/run.ts
var largest4 = 0.03;
var smallest2 = 1e-4;
var mostSteps = 2e5;
var ofStep = 3e-4;
var ofAll = 1e-8;
var justShort = 1e-9;
var fine = 1e-3;
var smallJump = 2e-3;
function run(model, { crackLength, displacement: end2, untilRow, refine = 1 }) {
  const equilibrium2 = equilibriumOf(model);
  const straight3 = model.rows.every(({ law }) => law.straight);
  const stride3 = strideOf(model, crackLength, refine);
  const seen = Float64Array.from(model.rows, ({ law }) => law.firm);
  let now = equilibrium2(crackLength, 1e-9 * crackLength, seen, new Float64Array(seen.length));
  let energy2 = stored(model, now);
  const sums = { work: energy2.elastic, friction: 0, released: 0, off: 0 };
  const nothing4 = { ...now, displacement: 0, load: 0, rubbed: [] };
  const states = [{ ...recordOf(model, nothing4, energy2, sums, crackLength), work: 0, elastic: 0, armStrain: 0 }];
  const events = [];
  let [zoneLength, energyError, overlap] = [bridgedLength(model, now), 0, 0];
  let step4 = largest4 / refine;
  let grew = false;
  let rate = 0;
  for (let count = 0; now.displacement < end2 && now.crackLength < model.longest; count++) {
    if (count === mostSteps) tooLong(now);
    const factor = straight3 ? proportionalLimit(model, now) : 1;
    if (Math.min(factor, end2) === Number.POSITIVE_INFINITY) break;
    const inProportion = factor > 1 + 1e-7;
    const least2 = inProportion || step4 <= smallest2 / refine;
    const target = Math.min(end2, now.displacement * (inProportion ? factor * (1 - justShort) : 1 + step4));
    const enough2 = least2 ? Number.POSITIVE_INFINITY : 0.03 / refine * now.crackLength;
    const first2 = rate > 0 ? Math.min(1.1 * rate * (target - now.displacement), stride3.longest) : stride3.first;
    const reached = settle(model, equilibrium2, now, target, { ...stride3, first: first2, enough: enough2 });
    const cost = stepEnergy(model, now, energy2, reached.state);
    const slight = step4 <= fine / refine && cost.off > 0 && cost.off <= smallJump * sums.work;
    const smooth2 = Math.abs(cost.off) <= ofStep * Math.abs(cost.work) / refine + ofAll * sums.work;
    const strain2 = model.strain(reached.state) / model.strainLimit;
    const good = reached.complete && (smooth2 || slight) && strain2 < 1 + 1e-4;
    if (!good && !least2) {
      step4 = Math.max(smallest2 / refine, step4 / (reached.complete ? 2 : 4));
      continue;
    }
    accept(reached, cost, !smooth2 && cost.off > 0);
    if (strain2 >= 1 - 1e-7) {
      const { load, displacement, crackLength: crackLength2 } = now;
      events.push({ kind: "arm", load, displacement, crackLength: crackLength2, from: crackLength2 });
      break;
    }
    if (untilRow !== void 0 && (now.load > untilRow.load || events.some(({ kind: kind2 }) => kind2 !== "bond"))) break;
    const most5 = (straight3 || grew ? largest4 : 1) / refine;
    step4 = Math.min(most5, smooth2 ? 1.6 * step4 : slight ? step4 : largest4 / refine / 10);
  }
  return { states, events, zoneLength, energyError, overlap };
  function accept(reached, cost, jump) {
    events.push(...eventsOf2(model, now, reached, jump, grew));
    const growth2 = reached.state.crackLength - now.crackLength;
    grew = growth2 > 0;
    rate = jump ? 0 : growth2 / (reached.state.displacement - now.displacement);
    now = reached.state;
    energy2 = cost.stored;
    sums.work += cost.work;
    sums.friction += cost.friction;
    if (jump) sums.released += cost.off;
    else sums.off += cost.off;
    energyError = Math.max(energyError, Math.abs(sums.off) / sums.work);
    zoneLength = Math.max(zoneLength, bridgedLength(model, now));
    overlap = Math.max(overlap, overlapAtRows(model, now));
    states.push(recordOf(model, now, energy2, sums, crackLength));
  }
}
function strideOf({ rows, longest }, crackLength, refine) {
  const places = rows.map(({ place }) => place).filter((place) => place > crackLength);
  const gap = places.slice(1).reduce((least2, place, i) => {
    const distance2 = place - (places[i] ?? 0);
    return distance2 > 0 ? Math.min(least2, distance2) : least2;
  }, longest);
  const whole2 = Math.max(longest - crackLength, 1e-6 * longest);
  const piece = Math.max(whole2 / 1e3, Math.min(whole2 / 100, gap / 4)) / refine;
  return { first: piece / 8, longest: piece };
}
function tooLong({ displacement, crackLength }) {
  return fail({
    code: "not-computable",
    message: `steps = ${mostSteps}, given up at displacement ${displacement} m and crack length ${crackLength} m`,
    hint: "give a displacement or a crack length at which to stop"
  });
}

// packages/core/src/fracture/specimen/verdict.ts
var farthest3 = 100;
var endless2 = 1e6;
function verdictOf(model, asTested, plan) {
  const whole2 = asTested.events.length > 0 ? asTested : run(model, { ...plan, displacement: Number.POSITIVE_INFINITY });
  const first2 = limitedBy2(whole2) ?? onset2(whole2);
  if (first2 === void 0) return { first: "bond", load: mostLoad(whole2, Number.POSITIVE_INFINITY) };
  const limit5 = { first: first2.kind, load: first2.load };
  const grown = onset2(whole2) !== void 0;
  if (!canFail2(model, first2.kind) && grown) return limit5;
  const displacement = farthest3 * first2.displacement;
  const again = run(without2(model, first2.kind), { ...plan, displacement, untilRow: { load: farthest3 * first2.load } });
  const next = limitedBy2(again) ?? (grown ? void 0 : onset2(again));
  return next === void 0 ? limit5 : { ...limit5, next: next.kind, margin: next.load / first2.load };
}
function limitedBy2(tested) {
  const limits2 = tested.events.filter(({ kind: kind2 }) => kind2 !== "bond").map(({ kind: kind2, load, displacement }) => ({
    kind: kind2,
    displacement,
    load: Math.max(load, mostLoad(tested, displacement))
  }));
  const highest = limits2.reduce(
    (most5, one) => one.load > (most5?.load ?? 0) ? one : most5,
    void 0
  );
  return limits2.find(({ kind: kind2 }) => kind2 === "arm") ?? highest;
}
function mostLoad({ states }, displacement) {
  return states.reduce((most5, state) => state.displacement <= displacement ? Math.max(most5, state.load) : most5, 0);
}
var onset2 = ({ events }) => events.find(({ kind: kind2 }) => kind2 === "bond");
function canFail2({ rows, strainLimit }, besides) {
  return besides !== "arm" && Number.isFinite(strainLimit) || rows.some(({ failure: failure2 }) => failure2 !== besides);
}
function without2(model, kind2) {
  if (kind2 === "bond") return { ...model, tipLimit: Number.POSITIVE_INFINITY, bondWork: Number.POSITIVE_INFINITY };
  if (kind2 === "arm") return { ...model, strainLimit: Number.POSITIVE_INFINITY };
  const rows = model.rows.map((row) => row.failure === kind2 ? { ...row, law: unbreakable2(row.law) } : row);
  return { ...model, rows };
}
function unbreakable2(law) {
  const last = law.opening.lastIndexOf(law.peak);
  const top = law.force.indexOf(Math.max(...law.force), law.opening.indexOf(law.peak));
  const points4 = Math.min(top, last) + 1;
  const extend = (list, value) => Float64Array.of(...list.subarray(0, points4), value);
  const force = law.force[points4 - 1] ?? 0;
  const end2 = endless2 * law.peak;
  const area = (law.area[points4 - 1] ?? 0) + (1 + endless2) / 2 * force * (end2 - law.peak);
  return {
    ...law,
    opening: extend(law.opening, end2),
    force: extend(law.force, endless2 * force),
    area: extend(law.area, area),
    peak: end2,
    end: end2
  };
}

// packages/core/src/fracture/specimen/result.ts
function pull2({ model, plan, width, byLoad, straight: straight3, notes: notes4, sources }) {
  const whole2 = run(model, plan);
  const { states, zoneLength, energyError, overlap } = whole2;
  const verdict = verdictOf(model, whole2, plan);
  const warnings = [];
  const bend = Math.max(...states.map(({ displacement, crackLength }) => displacement / straight3.of(crackLength)));
  if (bend > straight3.most) {
    warnings.push({
      level: "warning",
      text: `Displacement reaches ${bend.toFixed(2)} of the ${straight3.length}; linear beams hold to about ${straight3.most} (common practice, no source).`
    });
  }
  if (overlap > 0.01 * (states.at(-1)?.displacement ?? 0)) {
    const depth = (overlap * 1e3).toPrecision(2);
    warnings.push({
      level: "warning",
      text: `Crack faces would overlap by ${depth} mm at a row; contact between them is left out.`
    });
  }
  if (energyError > 5e-3) {
    const percent5 = (100 * energyError).toFixed(1);
    warnings.push({ level: "warning", text: `The energy balance is open by ${percent5} %.` });
  }
  return {
    states,
    events: whole2.events.map(({ from, ...event }) => ({ ...event, byLoad: byLoad(event.load, from) })),
    resistance: resistanceOf(
      states.map(({ crackLength, load, displacement, work: work2, released = 0 }) => ({
        crackLength,
        byLoad: byLoad(load, crackLength),
        work: work2,
        stored: load * displacement / 2,
        released
      })),
      width
    ),
    peakForce: Math.max(...states.map(({ load }) => load)),
    ...Number.isFinite(model.strainLimit) && {
      armShare: Math.max(...states.map(({ armStrain }) => armStrain)) / model.strainLimit
    },
    zoneLength,
    verdict,
    energyError,
    notes: uniqueNotes([...notes4, ...warnings]),
    sources: uniqueSources(sources)
  };
}

// packages/core/src/fracture/specimen/dcb.ts
var notes = [
  {
    level: "assumption",
    text: "Arms are linear beams with shear; both carry the same moment, so that unequal arms open as one beam of added compliance."
  },
  {
    level: "assumption",
    text: "The bond is an elastic bed of the inner halves of the arms; a row ahead of the tip acts beside it, against the same opening."
  },
  {
    level: "assumption",
    text: "Threads of a row share its force equally, unload straight to where force began, and do not recover."
  }
];
var left2 = 4;
function simulateDcb(specimen) {
  const { width, arms: arms2, crackLength, length: length2, bondToughness } = specimen;
  checkArms(arms2);
  requirePositive("width", width, inMillimetres);
  requirePositive("length", length2, inMillimetres);
  requirePositive("bondToughness", bondToughness, (value) => `${value} J/m\xB2`);
  requireInside("crackLength", crackLength, length2, "length");
  const pair2 = openingPair(arms2);
  const end2 = length2 - left2 * rootLength(pair2);
  const plan = planOf(specimen, end2);
  const rows = modelRows(specimen.rows, length2, "length");
  const model = {
    chain: openingChain(
      pair2,
      width,
      length2,
      rows.map(({ place }) => place)
    ),
    rows,
    tipLimit: Math.sqrt(2 * bondToughness / bedStiffness(pair2)),
    bondWork: bondToughness * width,
    longest: plan.longest,
    ...openingStrain(specimen, rows)
  };
  return pull2({
    model,
    plan,
    width,
    byLoad: (load, a) => openingRelease(pair2, width, load, a),
    straight: { most: 0.4, length: "crack length", of: (a) => a },
    notes,
    sources: ["kanninen-1973", "williams-1989", "selvage-2026-derivation"]
  });
}

// packages/core/src/fracture/specimen/sliding-chain.ts
var band2 = 1;
var stride2 = band2 + 1;
function slidingChain(input) {
  const { pair: pair2, width, length: length2, bending, friction, upperShare } = input;
  const { D, B, H: H2 } = pair2;
  const loadPlaces = bending.loads.map(({ place }) => place);
  const places = placesOf([0, ...loadPlaces, bending.span, length2], input.rows, length2);
  const { at: at4 } = places;
  const points4 = at4.length + 1;
  const K = new Float64Array((points4 + band2) * stride2);
  const drive = new Float64Array(points4 + band2);
  const load = new Float64Array(points4 + band2);
  const row = new Int32Array(input.rows.length);
  const rubs = [0, ...loadPlaces].map(() => ({ unknown: 0, perLoad: 0 }));
  const atSupport = friction * leftSupport(bending) * upperShare;
  const shareOfLoads = bending.loads.map(({ share: share2 }) => friction * share2 * (1 - upperShare));
  const placeOfLoads = placesOf(at4, loadPlaces, length2).ofRow;
  const near5 = 1e-6 / pair2.decay;
  const moments = at4.map((place) => momentAt(bending, place));
  const whole2 = at4.slice(1).reduce((sum5, place, i) => {
    const [from, m0, m1] = [at4[i], moments[i], moments[i + 1]];
    const l = place - from;
    return sum5 + l * (m0 * m0 + m0 * m1 + m1 * m1) / (3 * width * pair2.bonded) + (m1 - m0) ** 2 / (l * width * pair2.S);
  }, 0);
  const laid = {
    unknowns: 0,
    settled: 0,
    loaded: 0,
    felt: 0,
    first: 0,
    beyond: row.length,
    tip: 0,
    next: 0,
    direct: 0
  };
  const { ofRow } = places;
  const add = (point, l, m0, m1, bonded) => {
    const x = bonded ? pair2.decay * l : 0;
    const scale = B * width / l;
    const e0 = -H2 * m0 / (D * width);
    const e1 = -H2 * m1 / (D * width);
    const own2 = bonded ? x / Math.tanh(x) : 1;
    const other = bonded ? x / Math.sinh(x) : 1;
    const t = bonded ? Math.tanh(x / 2) / (x / 2) : 1;
    const first2 = point * stride2;
    K[first2] = K[first2] + scale * own2;
    K[first2 + 1] = -scale * other;
    K[first2 + stride2] = K[first2 + stride2] + scale * own2;
    const spread3 = (e1 - e0) / 2 * t;
    drive[point] = drive[point] - scale * l * (e0 + spread3);
    drive[point + 1] = drive[point + 1] + scale * l * (e1 - spread3);
    const within4 = x > 0.02 ? (1 - t) / (x * x) : 1 / 12 - x * x / 120;
    laid.direct += scale * l * l * (e1 - e0) ** 2 * within4;
  };
  const lay = (tip) => {
    const { before: before2, on } = tipAmong(places, tip, near5);
    const extra = on ? 0 : 1;
    laid.unknowns = at4.length + extra;
    laid.tip = before2;
    laid.direct = whole2;
    K.fill(0, 0, laid.unknowns * stride2);
    drive.fill(0, 0, laid.unknowns);
    for (let i = 0; i + 1 < at4.length; i++) {
      const [from, to] = [at4[i], at4[i + 1]];
      const [m0, m1] = [moments[i], moments[i + 1]];
      if (!on && i === before2 - 1) {
        const m = momentAt(bending, tip);
        add(i, tip - from, m0, m, false);
        add(i + 1, to - tip, m, m1, true);
      } else if (i < before2) add(i, to - from, m0, m1, false);
      else add(i + extra, to - from, m0, m1, true);
    }
    for (let j = 0; j < row.length; j++) {
      const place = ofRow[j];
      row[j] = place < before2 ? place : place + extra;
    }
    load.set(drive);
    rubs.forEach((rub, i) => {
      const place = i === 0 ? 0 : placeOfLoads[i - 1];
      rub.unknown = place < before2 ? place : place + extra;
      rub.perLoad = place >= before2 ? 0 : i === 0 ? atSupport : shareOfLoads[i - 1];
      load[rub.unknown] = load[rub.unknown] - rub.perLoad;
    });
    return laid;
  };
  return { band: band2, K, load, drive, row, rubs, lay, fill: () => void 0 };
}

// packages/core/src/fracture/specimen/sliding-pair.ts
function slidingPair([one, two]) {
  const D = one.bendingStiffness + two.bendingStiffness;
  const H2 = (one.thickness + two.thickness) / 2;
  const axial = 1 / (1 / one.axialStiffness + 1 / two.axialStiffness);
  const B = 1 / (1 / axial + H2 * H2 / D);
  const yielding2 = ({ thickness: h, shearStiffness }) => h * h * 5 / (72 * shearStiffness);
  const k = 1 / (yielding2(one) + yielding2(two));
  const S = one.shearStiffness + two.shearStiffness;
  return { D, bonded: D + axial * H2 * H2, S, H: H2, B, k, decay: Math.sqrt(k / B) };
}

// packages/core/src/fracture/specimen/sliding-strain.ts
function slidingStrain({ arms: arms2, width }, pair2, bending, rows) {
  const { D, H: H2, bonded } = pair2;
  const limits2 = arms2.map(breakingStrain);
  const strainLimit = Math.min(...limits2);
  const weights = limits2.map((limit5) => strainLimit === Number.POSITIVE_INFINITY ? 1 : strainLimit / limit5);
  const axial = arms2.reduce((sum5, { axialStiffness }) => sum5 + axialStiffness, 0);
  const outer = arms2.map(({ thickness }, i) => H2 * ((arms2[1 - i]?.axialStiffness ?? 0) / axial) + thickness / 2);
  const strain2 = ({ load, crackLength, opening: opening2, largest: largest5, rubbed }) => {
    let most5 = 0;
    const at4 = (place, N2) => {
      const bend = Math.abs(load * momentAt(bending, place) - H2 * N2) / (D * width);
      arms2.forEach(({ thickness, axialStiffness }, i) => {
        const own2 = bend * thickness / 2 + N2 / (axialStiffness * width);
        most5 = Math.max(most5, own2 * weights[i]);
      });
    };
    let N = rubbed[0]?.force ?? 0;
    for (let j = 0; j < rows.length; j++) {
      const { place, law } = rows[j];
      if (place >= crackLength) break;
      at4(place, N);
      const w = opening2[j];
      const m = largest5[j];
      N += forceAfter(law, w, m);
    }
    at4(crackLength, N);
    for (const { place } of bending.loads) {
      if (place < crackLength) at4(place, N);
      else {
        const curvature = load * momentAt(bending, place) / (bonded * width);
        outer.forEach((distance2, i) => {
          most5 = Math.max(most5, curvature * distance2 * weights[i]);
        });
      }
    }
    return most5;
  };
  return { strain: strain2, strainLimit };
}

// packages/core/src/fracture/specimen/enf.ts
var notes2 = [
  {
    level: "assumption",
    text: "Arms are linear beams with shear that bend as one: crack faces touch, sections of both turn alike."
  },
  {
    level: "assumption",
    text: "The bond is an elastic bed in shear; a row ahead of the tip acts beside it, against the same sliding."
  },
  {
    level: "assumption",
    text: "Threads of a row share its force equally, unload straight to where force began, and do not recover."
  }
];
var rubbing = {
  level: "assumption",
  text: "Crack faces rub where supports and loads press the arms together, each arm taking its share of the bending; friction keeps its direction."
};
function simulateEnf(specimen) {
  const { width, arms: arms2, crackLength, span, overhang = 0, loadSpan, friction = 0, bondToughness } = specimen;
  checkArms(arms2);
  requirePositive("width", width, inMillimetres);
  requirePositive("span", span, inMillimetres);
  requirePositive("bondToughness", bondToughness, (value) => `${value} J/m\xB2`);
  requireFriction(friction);
  if (overhang !== 0) requirePositive("overhang", overhang, inMillimetres);
  if (loadSpan !== void 0) requireInside("loadSpan", loadSpan, span, "span");
  const length2 = span + overhang;
  const loads = loadsOf(span, loadSpan);
  const last = loads.at(-1)?.place ?? span / 2;
  requireInside("crackLength", crackLength, last, "place of the last load");
  const bending = { span, loads };
  const pair2 = slidingPair(arms2);
  const plan = planOf(specimen, last);
  const rows = modelRows(specimen.rows, length2, "length");
  const upperShare = arms2[0].bendingStiffness / pair2.D;
  const places = rows.map(({ place }) => place);
  const model = {
    chain: slidingChain({ pair: pair2, width, length: length2, bending, rows: places, friction, upperShare }),
    rows,
    tipLimit: Math.sqrt(2 * bondToughness / pair2.k),
    bondWork: bondToughness * width,
    longest: plan.longest,
    ...slidingStrain(specimen, pair2, bending, rows)
  };
  return pull2({
    model,
    plan,
    width,
    byLoad: (load, a) => slidingRelease(pair2, bending, width, load, a),
    straight: { most: 0.1, length: "span", of: () => span },
    notes: friction > 0 ? [...notes2, rubbing] : notes2,
    sources: [
      "russell-street-1982",
      "wang-williams-1992",
      "carlsson-gillespie-pipes-1986",
      ...loadSpan === void 0 ? [] : ["martin-davidson-1999"],
      "selvage-2026-derivation"
    ]
  });
}
function loadsOf(span, loadSpan) {
  if (loadSpan === void 0) return [{ place: span / 2, share: 1 }];
  return [-1, 1].map((side2) => ({ place: (span + side2 * loadSpan) / 2, share: 0.5 }));
}

// packages/core/src/fracture/coupon/pull-coupon.ts
function pullCoupon(specimen, rows) {
  switch (specimen.kind) {
    case "dcb":
      return simulateDcb({ ...specimen, rows });
    case "enf":
      return simulateEnf({ ...specimen, rows });
    case "peel":
      return simulatePeel({ ...specimen, rows });
  }
}

// packages/core/src/fracture/coupon/reading.ts
function readToughness({ events, resistance }, bridged) {
  const onsets = [];
  let last = Number.NEGATIVE_INFINITY;
  let broke = false;
  for (const { kind: kind2, displacement, byLoad } of events) {
    if (kind2 === "bond") continue;
    if (kind2 === "arm") broke = true;
    if (displacement > last) onsets.push(byLoad);
    last = displacement;
  }
  if (onsets.length > 0) return { toughness: mean2(onsets), of: broke ? "armBreak" : "fullZone" };
  const grown = resistance.map(({ byLoad }) => byLoad);
  if (!bridged && grown.length > 0) return { toughness: mean2(grown), of: "unbridged" };
  const seen = [...grown, ...events.map(({ byLoad }) => byLoad)];
  if (seen.length === 0) {
    fail({
      code: "not-computable",
      message: "the test ends before the crack grows: there is no toughness to read",
      hint: "pull further, or leave out the displacement at the end"
    });
  }
  return { toughness: Math.max(...seen), of: bridged ? "greatest" : "unbridged" };
}
var mean2 = (values) => values.reduce((sum5, value) => sum5 + value, 0) / values.length;
var words2 = {
  fullZone: {
    level: "assumption",
    text: "Toughness of the coupon as a tester reads it: the mean, by the loads, of the onsets of growth from the first row that gives way."
  },
  unbridged: {
    level: "assumption",
    text: "Toughness of the coupon as a tester reads it: the mean, by the loads, over the growth."
  },
  greatest: {
    level: "warning",
    text: "No row gives way before the test ends, so the bridged zone never gets full: toughness is the greatest value that the loads show."
  },
  armBreak: {
    level: "warning",
    text: "An arm breaks and ends the test: toughness is what was read until then, a lower bound of what the stitches could give."
  }
};
function readingNote({ of }) {
  return words2[of];
}

// packages/core/src/fracture/coupon/fast-model.ts
function leverOf(specimen, rows) {
  const { from, to } = growthRange(specimen);
  if (specimen.kind === "enf") return to;
  return rows.find(({ position }) => position >= from)?.position ?? from;
}
function fastValue(coupon) {
  const { kind: kind2, arms: arms2, bond, stitches } = coupon;
  const ceiling = armCeiling(arms2[0], arms2[1]) ?? Number.POSITIVE_INFINITY;
  if (stitches === void 0) return { steady: bond, reading: bond, ceiling };
  const { density, perFront, force, opening: opening2, work: work2 } = stitches;
  const increment = density * work2;
  const steady = bond + increment;
  if (kind2 === "enf") return { steady, reading: slidingReading(coupon, stitches, steady), ceiling };
  const D = openingPair(arms2).bendingStiffness;
  const single2 = rowStrength(D, bond, perFront * force, opening2) - bond;
  return {
    steady,
    reading: bond + Math.hypot(increment, single2),
    ceiling,
    length: bridgingLength(2 * D, density, { peak: { force, opening: opening2 } })
  };
}
function slidingReading({ arms: arms2, bond, growth: growth2 }, { density, force, opening: opening2 }, steady) {
  const length2 = Math.sqrt(slidingPair(arms2).B * opening2 / (density * force));
  return Math.min(steady, bond * Math.cosh(Math.min(growth2 / length2, 50)) ** 2);
}
function rowStrength(D, bond, f, w) {
  const M0 = Math.sqrt(2 * bond * D);
  let c = Math.cbrt(6 * D * w / f);
  for (let round = 0; round < 50; round++) {
    const step4 = (M0 * c * c / 2 + f * c ** 3 / 6 - D * w) / (M0 * c + f * c * c / 2);
    c -= step4;
    if (!(Math.abs(step4) > 1e-12 * c)) break;
  }
  return (M0 + f * c) ** 2 / (2 * D);
}
var joint = 2.7;
function fastForce({ kind: kind2, width, arms: arms2, span: a }, J, span = a) {
  if (kind2 === "enf") return width * Math.sqrt(J * (arms2[0].bendingStiffness + arms2[1].bendingStiffness)) / span;
  const pair2 = openingPair(arms2);
  const straight3 = width * Math.sqrt(2 * J * pair2.bendingStiffness) / (span + rootLength(pair2));
  if (kind2 === "dcb") return straight3;
  return (straight3 ** joint + (width * J / 2) ** joint) ** (1 / joint);
}
function fastPeak(coupon, J) {
  return Math.max(fastForce(coupon, J), fastForce(coupon, Math.min(coupon.bond, J), coupon.crack));
}
function toughnessAtLoad(coupon, J, factor) {
  const wanted = factor * fastForce(coupon, J);
  let [low, high] = [Math.min(factor, factor * factor) * J, Math.max(factor, factor * factor) * J];
  for (let round = 0; round < 60; round++) {
    const middle = Math.sqrt(low * high);
    if (fastForce(coupon, middle) < wanted) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

// packages/core/src/fracture/coupon/path-numbers.ts
import { Matrix as Matrix8 } from "ml-matrix";

// packages/core/src/fracture/coupon/samples.ts
var z953 = 1.6448536269514722;
var standardNormal = (random) => Math.log(samplePrior({ value: 1, low: Math.exp(-z953), high: Math.exp(z953), distribution: "lognormal" }, random));
var names3 = Object.keys(bridgingPriors);
function drawSamples(options) {
  const { samples, random } = startSampling(options);
  return Array.from({ length: samples }, () => {
    const parameters = {};
    for (const name of names3) parameters[name] = samplePrior(bridgingPriors[name], random);
    return {
      parameters,
      bondToughnessFactor: samplePrior(specimenPriors.bondToughnessFactor, random),
      armStrengthFactor: samplePrior(specimenPriors.armStrengthFactor, random),
      armStiffnessFactor: samplePrior(specimenPriors.armStiffnessFactor, random),
      bondPlace: random(),
      measuredDeviation: standardNormal(random)
    };
  });
}
function parametersWith(drawn2, { parameters, bends }) {
  if (bends !== "yielding") return { ...drawn2, ...parameters };
  const { beddingIn: _, ...rest } = drawn2;
  return { ...rest, ...parameters };
}
function openingNumbers(penetration) {
  const { model } = bridgingModel(penetration);
  const way = givingWay(model);
  const { force, failure: failure2 } = way;
  return { force, opening: openingAt(model, force), work: openingWork(model, way), failure: failure2 };
}
function middleOf(draws) {
  const over2 = (of) => {
    const values = draws.map(of);
    const log = values.every((value) => value > 0);
    const sum5 = values.reduce((total3, value) => total3 + (log ? Math.log(value) : value), 0);
    return log ? Math.exp(sum5 / values.length) : sum5 / values.length;
  };
  const parameters = {};
  for (const name of names3) parameters[name] = over2((draw) => draw.parameters[name]);
  return {
    parameters,
    bondToughnessFactor: over2((draw) => draw.bondToughnessFactor),
    armStrengthFactor: over2((draw) => draw.armStrengthFactor),
    armStiffnessFactor: over2((draw) => draw.armStiffnessFactor),
    bondPlace: over2((draw) => draw.bondPlace),
    measuredDeviation: draws.reduce((sum5, draw) => sum5 + draw.measuredDeviation, 0) / draws.length
  };
}
function singleValues({ low, high }, bond) {
  const parameters = {};
  for (const name of names3) parameters[name] = bridgingPriors[name].value;
  return {
    parameters,
    bondToughnessFactor: 1,
    armStrengthFactor: 1,
    armStiffnessFactor: 1,
    bondPlace: high > low ? (bond - low) / (high - low) : 0,
    measuredDeviation: 0
  };
}

// packages/core/src/fracture/coupon/path-numbers.ts
var inFull = 24;
var ridge = 1e-6;
function numbersAlong(penetrations2, path) {
  const straight3 = penetrations2.map(openingNumbers);
  if (path === void 0) return straight3;
  const step4 = Math.max(1, Math.floor(penetrations2.length / inFull));
  const chosen = penetrations2.map((_, i) => i).filter((i) => i % step4 === 0);
  const features = penetrations2.map((one, i) => featuresOf(one, straight3[i]));
  const means = (features[0] ?? []).map(
    (_, k) => chosen.reduce((sum5, i) => sum5 + (features[i]?.[k] ?? 0), 0) / chosen.length
  );
  const centred = features.map((row) => row.map((value, k) => k === 0 ? 1 : value - (means[k] ?? 0)));
  const full2 = chosen.map((i) => {
    const { peak: peak2, work: work2 } = bridgingLaw({ ...penetrations2[i], path });
    const plain6 = straight3[i];
    return [peak2.force / plain6.force, peak2.opening / plain6.opening, work2 / plain6.work].map(Math.log);
  });
  const X2 = new Matrix8(chosen.map((i) => centred[i] ?? []));
  const XtX = X2.transpose().mmul(X2);
  for (let k = 1; k < XtX.rows; k++) XtX.set(k, k, XtX.get(k, k) + ridge * chosen.length);
  const fit = choleskyOf(XtX)?.solve(X2.transpose().mmul(new Matrix8(full2)));
  return straight3.map((one, i) => {
    const ratio = (column) => Math.exp((centred[i] ?? []).reduce((sum5, value, k) => sum5 + value * (fit?.get(k, column) ?? 0), 0));
    return { ...one, force: one.force * ratio(0), opening: one.opening * ratio(1), work: one.work * ratio(2) };
  });
}
function featuresOf({ parameters }, numbers) {
  const { force = 1, opening: opening2 = 1, work: work2 = 1 } = numbers ?? {};
  const { bearingPressure = 1, bearingWidth = 1 } = parameters ?? {};
  return [1, Math.log(force), Math.log(opening2), Math.log(work2), Math.log(bearingPressure * bearingWidth)];
}

// packages/core/src/fracture/coupon/sample-coupon.ts
function bondOf({ specimen, bondToughnessRange: range }, draw) {
  const { bondToughness: value } = specimen;
  if (range === void 0) return value * draw.bondToughnessFactor;
  return samplePrior({ ...range, value, distribution: "triangular" }, () => draw.bondPlace);
}
function armOf2(arm2, { armStiffnessFactor: stiffer, armStrengthFactor: stronger }) {
  const { failureStrain: failureStrain2 } = arm2;
  return {
    ...arm2,
    bendingStiffness: arm2.bendingStiffness * stiffer,
    axialStiffness: arm2.axialStiffness * stiffer,
    shearStiffness: arm2.shearStiffness * stiffer,
    ...failureStrain2 && {
      failureStrain: { tension: failureStrain2.tension * stronger, compression: failureStrain2.compression * stronger }
    }
  };
}
function sampledCoupon(coupon, draw) {
  const { specimen, stitching } = coupon;
  const [upper, lower] = specimen.arms;
  const arms2 = [armOf2(upper, draw), armOf2(lower, draw)];
  const drawn2 = { ...specimen, arms: arms2, bondToughness: bondOf(coupon, draw) };
  if (stitching === void 0) return { ...coupon, specimen: drawn2 };
  const { penetration } = stitching;
  const parameters = parametersWith(draw.parameters, penetration);
  const measured2 = stitching.measured && scaledLaw(stitching.measured, measuredFactor(stitching, draw));
  return {
    ...coupon,
    specimen: drawn2,
    stitching: { ...stitching, ...measured2 && { measured: measured2 }, penetration: { ...penetration, parameters } }
  };
}
function measuredFactor({ measuredVariation = usualVariation }, { measuredDeviation }) {
  return Math.exp(measuredDeviation * Math.sqrt(Math.log1p(measuredVariation ** 2)));
}
function fastSamples(coupon, rows, draws) {
  const { specimen } = coupon;
  const stitching = rows.length > 0 ? coupon.stitching : void 0;
  const { stitching: _, ...bare } = coupon;
  const span = leverOf(specimen, rows);
  const growth2 = stitching ? stitchedGrowth(specimen, stitching) : 0;
  const met = stitching && patternMet(stitching);
  const stitches = stitching && stitchNumbers(specimen.kind, stitching, draws);
  return draws.map((draw, i) => {
    const { arms: arms2, bondToughness } = sampledCoupon(bare, draw).specimen;
    const base2 = {
      kind: specimen.kind,
      width: specimen.width,
      arms: arms2,
      bond: bondToughness,
      crack: specimen.crackLength,
      span,
      growth: growth2
    };
    const one = stitches?.[i];
    if (met === void 0 || one === void 0) return { coupon: base2 };
    const { failure: failure2, force, opening: opening2, work: work2 } = one;
    return { coupon: { ...base2, stitches: { ...met, force, opening: opening2, work: work2 } }, failure: failure2 };
  });
}
function stitchNumbers(kind2, stitching, draws) {
  const { penetration, measured: measured2 } = stitching;
  if (measured2 !== void 0) {
    const { peak: peak2, work: work2, failure: failure2 } = couponLaw(kind2, stitching);
    return draws.map((draw) => {
      const factor = measuredFactor(stitching, draw);
      return { force: factor * peak2.force, opening: peak2.opening, work: factor * work2, failure: failure2 };
    });
  }
  const all = draws.map(({ parameters }) => ({ ...penetration, parameters: parametersWith(parameters, penetration) }));
  return numbersAlong(all, pathOf(kind2, stitching));
}
function checkBondRange({ specimen: { bondToughness }, bondToughnessRange: range }) {
  if (range === void 0) return;
  const { low, high } = range;
  if (low > 0 && low <= bondToughness && bondToughness <= high && Number.isFinite(high)) return;
  fail({
    code: "out-of-range",
    message: `bondToughness = ${bondToughness} in a range of ${low} to ${high} J/m\xB2, must lie in it`,
    allowed: "above 0, low <= value <= high"
  });
}

// packages/core/src/fracture/coupon/scale-coupon.ts
function scalePattern(pattern2, pitch, spacing2) {
  switch (pattern2.kind) {
    case "parallel":
    case "staggered":
      return { ...pattern2, pitch: pattern2.pitch * pitch, rowSpacing: pattern2.rowSpacing * spacing2 };
    case "zigzag":
      return {
        ...pattern2,
        pitch: pattern2.pitch * pitch,
        swing: pattern2.swing * spacing2,
        rowSpacing: pattern2.rowSpacing * spacing2
      };
    case "crossing": {
      const { second: second2, offset } = pattern2;
      return {
        ...pattern2,
        pitch: pattern2.pitch * pitch,
        rowSpacing: pattern2.rowSpacing * spacing2,
        second: { pitch: second2.pitch * pitch, rowSpacing: second2.rowSpacing * spacing2 },
        ...offset && { offset: { x: offset.x * pitch, y: offset.y * spacing2 } }
      };
    }
    case "rows": {
      const first2 = pattern2.rows[0]?.offset ?? 0;
      return {
        ...pattern2,
        rows: pattern2.rows.map((row) => ({
          ...row,
          offset: first2 + (row.offset - first2) * spacing2,
          pitch: row.pitch * pitch,
          ...row.stagger !== void 0 && { stagger: row.stagger * pitch }
        })),
        ...pattern2.bandWidth !== void 0 && { bandWidth: pattern2.bandWidth * spacing2 }
      };
    }
  }
}
function stitched(coupon, change) {
  return coupon.stitching === void 0 ? coupon : { ...coupon, stitching: change(coupon.stitching) };
}
function withPattern(coupon, pitch, spacing2) {
  return stitched(coupon, (stitching) => ({
    ...stitching,
    pattern: scalePattern(stitching.pattern, pitch, spacing2),
    penetration: {
      ...stitching.penetration,
      ...stitching.penetration.pitch !== void 0 && { pitch: stitching.penetration.pitch * pitch }
    }
  }));
}
function withDensity(coupon, factor) {
  return withPattern(coupon, factor ** -0.5, factor ** -0.5);
}
var thicker = (arm2, factor) => ({
  ...arm2,
  thickness: arm2.thickness * factor,
  bendingStiffness: arm2.bendingStiffness * factor ** 3,
  axialStiffness: arm2.axialStiffness * factor,
  shearStiffness: arm2.shearStiffness * factor
});
function changedCoupon(coupon, name, factor, anchorEfficiency = 1) {
  const { specimen } = coupon;
  switch (name) {
    case "pitch":
      return withPattern(coupon, factor, 1);
    case "rowSpacing":
      return withPattern(coupon, 1, factor);
    case "threadLinearDensity":
      return stitched(coupon, ({ penetration, ...rest }) => {
        const heavier = (thread) => ({ ...thread, linearDensity: thread.linearDensity * factor });
        const { needleThread, underThread } = penetration;
        const threads = {
          needleThread: heavier(needleThread),
          ...underThread && { underThread: heavier(underThread) }
        };
        return { ...rest, penetration: { ...penetration, ...threads } };
      });
    case "anchorEfficiency":
      return stitched(coupon, ({ penetration, ...rest }) => {
        const parameters = { ...penetration.parameters, anchorEfficiency: anchorEfficiency * factor };
        return { ...rest, penetration: { ...penetration, parameters } };
      });
    case "armThickness": {
      const [upper, lower] = specimen.arms;
      const arms2 = [thicker(upper, factor), thicker(lower, factor)];
      return stitched({ ...coupon, specimen: { ...specimen, arms: arms2 } }, ({ penetration, ...rest }) => ({
        ...rest,
        penetration: {
          ...penetration,
          thickness: penetration.thickness * factor,
          ...penetration.crackDepth !== void 0 && { crackDepth: penetration.crackDepth * factor }
        }
      }));
    }
    case "bondToughness":
      return { ...coupon, specimen: { ...specimen, bondToughness: specimen.bondToughness * factor } };
  }
}

// packages/core/src/fracture/coupon/coupon-changes.ts
var step3 = 0.02;
function couponChanges(coupon, draw, model) {
  const { stitching } = coupon;
  const { anchorEfficiency, sewnEfficiency } = bridgingParameters(stitching?.penetration.parameters);
  const better = anchorEfficiency < sewnEfficiency ? sewnEfficiency / anchorEfficiency : Math.min(1.2, 1 / anchorEfficiency);
  const { needleFace = "surface", underFace = "surface" } = stitching?.penetration.anchors ?? {};
  const computed = stitching !== void 0 && stitching.measured === void 0;
  const changes = [
    ...stitching === void 0 ? [] : [
      { name: "pitch", factor: 0.8 },
      { name: "rowSpacing", factor: 0.8 }
    ],
    ...computed ? [{ name: "threadLinearDensity", factor: 1.5 }] : [],
    ...computed && better > 1 && (needleFace === "surface" || underFace === "surface") ? [{ name: "anchorEfficiency", factor: better }] : [],
    { name: "armThickness", factor: 1.25 },
    { name: "bondToughness", factor: 1.25 }
  ];
  const with_ = ({ name, factor }) => changedCoupon(coupon, name, factor, anchorEfficiency);
  return changes.flatMap((change) => {
    try {
      const near5 = [-1, 1].map(
        (side2) => fastOf(with_({ name: change.name, factor: Math.exp(side2 * step3) }), draw, model)
      );
      const slope = (of) => Math.log(of(near5[1]) / of(near5[0])) / (2 * step3);
      const { result, rows } = pulled2(with_(change));
      return [
        {
          ...change,
          elasticity: { peakForce: slope((one) => one.peakForce), toughness: slope((one) => one.toughness) },
          peakForce: result.peakForce,
          toughness: readToughness(result, rows > 0).toughness,
          first: result.verdict.first
        }
      ];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}
function fastOf(coupon, draw, model) {
  const rows = rowsOf(coupon);
  const [sample] = fastSamples(coupon, rows, [draw]);
  return model(sample);
}
function rowsOf(coupon) {
  const { specimen, stitching } = coupon;
  return couponRows(coupon, stitching && couponLaw(specimen.kind, stitching));
}
function pulled2(coupon) {
  const rows = rowsOf(coupon);
  return { result: pullCoupon(coupon.specimen, rows), rows: rows.length };
}

// packages/core/src/fracture/coupon/zone-room.ts
var most3 = 0.95;
function zoneNeeded(bridgingLength2, measured2) {
  return zonePriors.zoneOverLength.high * (measured2 ? 1 : zonePriors.zoneShortfall.high) * bridgingLength2;
}
function fitsIn(lengths, { length: length2, measured: measured2 }) {
  const fitting = lengths.filter((one) => one !== void 0 && zoneNeeded(one, measured2) <= length2);
  return fitting.length >= most3 * lengths.length;
}

// packages/core/src/fracture/coupon/coupon-densities.ts
var factors = Array.from({ length: 9 }, (_, i) => 2 ** ((i - 4) / 2));
function denser(sample, factor) {
  const { stitches } = sample.coupon;
  if (stitches === void 0) return sample;
  const { density, spacing: spacing2, perFront } = stitches;
  const side2 = Math.sqrt(factor);
  const met = {
    density: density * factor,
    perFront: perFront * side2,
    ...spacing2 !== void 0 && { spacing: spacing2 / side2 }
  };
  return { ...sample, coupon: { ...sample.coupon, stitches: { ...stitches, ...met } } };
}
function couponDensities(density, samples, weights, model, room) {
  return factors.map((factor) => {
    const values = samples.map((sample) => model(denser(sample, factor)));
    const lengths = values.map(({ fast }) => fast.length);
    const steady = room && fitsIn(lengths, room) ? values.map(({ fast }) => fast.steady) : void 0;
    return {
      penetrationDensity: density * factor,
      ...steady && { steady: weightedInterval(steady, weights) },
      specimen: weightedInterval(
        values.map((value) => value.toughness),
        weights
      ),
      first: likeliest(values, weights)
    };
  });
}
function likeliest(values, weights) {
  const sums = /* @__PURE__ */ new Map();
  values.forEach(({ first: first2 }, i) => {
    sums.set(first2, (sums.get(first2) ?? 0) + weights[i]);
  });
  return [...sums].reduce((best, one) => one[1] > best[1] ? one : best)[0];
}
var search2 = { low: 1 / 32, high: 32 };
var sure = 1.1;
var most4 = 5;
function noReturn(coupon, nominal, model) {
  const excess2 = (factor) => {
    const { stitch, arm: arm2 } = model(denser(nominal, factor));
    return Math.log(stitch / arm2);
  };
  if (!(excess2(search2.low) < 0 && excess2(search2.high) > 0)) return void 0;
  let [low, high] = [search2.low, search2.high];
  for (let round = 0; round < 40; round++) {
    const middle = Math.sqrt(low * high);
    if (excess2(middle) < 0) low = middle;
    else high = middle;
  }
  const guess = Math.sqrt(low * high);
  return settled(guess, (factor) => armsBreak(coupon, factor));
}
function settled(guess, breaks) {
  let [low, high] = [guess / sure, guess * sure];
  let stride3 = sure * sure;
  let asked = 2;
  if (breaks(low)) {
    do {
      if (asked++ > most4) return void 0;
      high = low;
      low /= stride3;
      stride3 *= stride3;
    } while (breaks(low));
  } else {
    while (!breaks(high)) {
      if (asked++ > most4) return void 0;
      low = high;
      high *= stride3;
      stride3 *= stride3;
    }
  }
  while (high / low > sure * sure * 1.001) {
    const middle = Math.sqrt(low * high);
    if (breaks(middle)) high = middle;
    else low = middle;
  }
  return Math.sqrt(low * high);
}
function armsBreak(coupon, factor) {
  const denserCoupon = withDensity(coupon, factor);
  const { specimen, stitching } = denserCoupon;
  try {
    const rows = couponRows(denserCoupon, stitching && couponLaw(specimen.kind, stitching));
    return pullCoupon(specimen, rows).events.some(({ kind: kind2 }) => kind2 === "arm");
  } catch (error) {
    if (error instanceof SelvageError) return false;
    throw error;
  }
}

// packages/core/src/fracture/coupon/coupon-notes.ts
function couponNotes({ specimen, stitching, bondToughnessRange }, samples, rows) {
  const notes4 = [];
  const bond = bondToughnessRange === void 0 ? "scatter of the bond from panel to panel" : "the range of the bond";
  const stitch = stitching === void 0 ? "" : stitching.measured === void 0 ? "parameters of the stitch, " : "stitch as measured, ";
  notes4.push({
    level: "assumption",
    text: `Ranges hold nine in ten of ${samples} samples: ${stitch}${bond}, strength and stiffness of the arms (common practice). The error of the model itself is not in them.`,
    source: "common-practice"
  });
  if (stitching !== void 0 && rows === 0) {
    notes4.push({
      level: "warning",
      text: "No row of the pattern lies in the stitched stretch: the coupon is as without stitches."
    });
  }
  if (stitching?.measured !== void 0 && specimen.kind === "enf") {
    notes4.push({
      level: "warning",
      text: "The measured curve of the stitch is taken as that of sliding; a curve of opening would be another."
    });
  }
  if (specimen.kind === "enf" && stitching !== void 0) {
    notes4.push({
      level: "warning",
      text: "Bending an end-notched specimen was judged unsuitable for stitched laminates: the bridged zone seldom has room before the load point; read its toughness as that of this specimen only.",
      source: "mouritz-jain-1999"
    });
  }
  if (specimen.kind === "wedge" && rows > 0) {
    notes4.push({
      level: "warning",
      text: "No toughness for an edge: its rows are fewer than a bridged zone; read where the split stops and which rows break."
    });
  }
  return notes4;
}

// packages/core/src/fracture/coupon/anchored-model.ts
function anchoredModel(anchors) {
  const sorted = monotone([...anchors].sort((a, b) => a.reading - b.reading));
  return ({ coupon, failure: failure2 }) => {
    const fast = fastValue(coupon);
    const { reading, ceiling } = fast;
    const place = placeOf2(sorted, reading);
    const stitch = reading * between3(place, place.a.stitch, place.b.stitch);
    const arm2 = (Number.isFinite(ceiling) ? ceiling : reading) * between3(place, place.a.arm, place.b.arm);
    const toughness3 = Math.min(arm2, stitch);
    const peakForce = fastPeak(coupon, toughness3) * between3(place, place.a.force, place.b.force);
    const nearest2 = place.t < 0.5 ? place.a : place.b;
    const other = nearest2.bondOnly || failure2 === void 0 ? "bond" : failure2;
    return { fast, toughness: toughness3, peakForce, first: arm2 < stitch ? "arm" : other, stitch, arm: arm2 };
  };
}
function placeOf2(sorted, reading) {
  const next = sorted.findIndex((anchor) => anchor.reading > reading);
  const b = next < 0 ? sorted.at(-1) : sorted[next];
  const a = next > 0 ? sorted[next - 1] : b;
  if (a === b) return { a, b, t: 0 };
  return { a, b, t: Math.log(reading / a.reading) / Math.log(b.reading / a.reading) };
}
function between3({ t }, low, high) {
  if (low === high || !Number.isFinite(low + high)) return Math.min(low, high);
  return low * (high / low) ** t;
}
function monotone(anchors) {
  const groups2 = [];
  const level = (group2) => group2.reduce((sum5, { reading, stitch }) => sum5 + Math.log(reading * stitch), 0) / group2.length;
  for (const anchor of anchors) {
    groups2.push([anchor]);
    for (let last = groups2.at(-1), before2 = groups2.at(-2); last && before2 && level(before2) > level(last); ) {
      groups2.splice(-2, 2, [...before2, ...last]);
      last = groups2.at(-1);
      before2 = groups2.at(-2);
    }
  }
  return groups2.flatMap(
    (group2) => group2.map((anchor) => ({ ...anchor, stitch: Math.exp(level(group2)) / anchor.reading }))
  );
}

// packages/core/src/fracture/coupon/anchors.ts
var farOff = 100;
function anchorOf(coupon, result, bridged) {
  const fast = fastValue(coupon);
  const { toughness: toughness3, of } = readToughness(result, bridged);
  const { verdict, peakForce, armShare = 0 } = result;
  const armLimits = verdict.first === "arm";
  const margin = verdict.margin ?? farOff;
  const stitch = armLimits ? toughnessAtLoad(coupon, toughness3, margin) : toughness3;
  const arm2 = armLimits ? toughness3 : armShare > 0 ? toughness3 / armShare ** 2 : Number.POSITIVE_INFINITY;
  return {
    reading: fast.reading,
    stitch: stitch / fast.reading,
    arm: Number.isFinite(fast.ceiling) ? arm2 / fast.ceiling : arm2 / fast.reading,
    force: peakForce / fastPeak(coupon, toughness3),
    bondOnly: of === "greatest" || !bridged && !armLimits
  };
}
var strata = [
  { at: 0.05, half: 0.05 },
  { at: 0.5, half: 0.05 },
  { at: 0.95, half: 0.05 }
];
function simulateStrata(coupon, samples, draws) {
  const readings = samples.map((sample) => fastValue(sample.coupon).reading);
  const order = readings.map((_, i) => i).sort((a, b) => readings[a] - readings[b]);
  return strata.flatMap(({ at: at4, half }) => {
    const from = Math.floor((at4 - half) * order.length);
    const members = order.slice(from, Math.max(from + 1, Math.ceil((at4 + half) * order.length)));
    const middle = middleOf(members.map((i) => draws[i]));
    try {
      return [simulateDraw(coupon, middle)];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}
function simulateDraw(coupon, draw) {
  const drawn2 = sampledCoupon(coupon, draw);
  const specimen = drawn2.specimen;
  const law = drawn2.stitching && couponLaw(specimen.kind, drawn2.stitching);
  const rows = couponRows(drawn2, law);
  const [sample] = fastSamples(coupon, rows, [draw]);
  const result = pullCoupon(specimen, rows);
  return anchorOf(sample.coupon, result, rows.length > 0);
}

// packages/core/src/fracture/coupon/foretell.ts
function singleDraw({ specimen: { bondToughness }, bondToughnessRange: range }) {
  return singleValues(range ?? { low: bondToughness, high: bondToughness }, bondToughness);
}
function foretell(coupon, draws) {
  const { specimen, stitching } = coupon;
  const law = stitching && couponLaw(specimen.kind, stitching);
  const rows = couponRows(coupon, law);
  const result = pullCoupon(specimen, rows);
  const [nominal] = fastSamples(coupon, rows, [singleDraw(coupon)]);
  const samples = fastSamples(coupon, rows, draws);
  const bridged = rows.length > 0;
  const own2 = anchorOf(nominal.coupon, result, bridged);
  const anchors = simulateStrata(coupon, samples, draws);
  const model = anchoredModel(anchors.length > 0 ? anchors : [own2]);
  return {
    ...law && { law },
    rows,
    result,
    reading: readToughness(result, bridged),
    nominal,
    samples,
    values: samples.map(model),
    model,
    nearby: anchoredModel([own2])
  };
}
function weightsBy(tests, draws, own2) {
  const foretold = tests.map(({ coupon, test }) => {
    const { values } = own2?.coupon === coupon ? own2 : foretell(coupon, draws);
    return { test, peakForces: values.map(({ peakForce }) => peakForce) };
  });
  return testWeights(foretold, draws.length);
}

// packages/core/src/fracture/coupon/predicted-parts.ts
function couponToughness({ specimen }, stitching, law) {
  const { density, spacing: spacing2 } = patternMet(stitching);
  const base2 = { law, penetrationDensity: density, bondToughness: specimen.bondToughness };
  if (specimen.kind === "enf") return { ...toughness(base2), notes: law.notes };
  const [arm2, otherArm] = specimen.arms;
  const length2 = stitchedGrowth(specimen, stitching);
  return toughness({
    ...base2,
    arm: arm2,
    otherArm,
    ...spacing2 !== void 0 && { rowDistance: spacing2 },
    ...length2 > 0 && { length: length2 }
  });
}
function couponZone({ zone }, { zoneLength }, { of }, measured2) {
  if (zone !== void 0) return { computed: zoneLength, ...zone };
  if (of !== "fullZone" || !(zoneLength > 0)) return void 0;
  const needed4 = (measured2 ? 1 : zonePriors.zoneShortfall.high) * zoneLength;
  return { computed: zoneLength, low: zoneLength, high: zoneLength, needed: needed4 };
}
function steadyValue({ specimen, stitching }, values, weights, plain6, zone) {
  const fast = values.map((value) => value.fast);
  const range = () => weightedInterval(
    fast.map(({ steady }) => steady),
    weights
  );
  if (stitching === void 0 || plain6 === void 0) {
    return { value: { nominal: specimen.bondToughness, ...range() }, notes: [] };
  }
  const length2 = stitchedGrowth(specimen, stitching);
  const measured2 = stitching.measured !== void 0;
  if (specimen.kind === "enf") {
    return zone !== void 0 && zone.needed <= length2 && plain6.steady !== void 0 ? { value: { nominal: plain6.steady, ...range() }, notes: [] } : { notes: [noRoomInSliding] };
  }
  if (plain6.steady === void 0) return { notes: [] };
  const fits = fitsIn(
    fast.map((one) => one.length),
    { length: length2, measured: measured2 }
  );
  return fits ? { value: { nominal: plain6.steady, ...range() }, notes: [] } : { notes: [tooFewFit] };
}
var noRoomInSliding = {
  level: "warning",
  text: "no steady toughness in sliding: the bridged zone may not fit between the starting crack and the load"
};
var tooFewFit = {
  level: "warning",
  text: "no steady toughness: in more than one sample of twenty the bridged zone may not fit"
};
function bridgingRange(law, samples, weights) {
  const range = (of) => weightedInterval(samples.map(of), weights);
  const {
    bond: _,
    arm: __,
    ...failures2
  } = verdictShares(
    samples.map(({ failure: failure2 }) => failure2),
    weights
  );
  return {
    peak: range(({ force }) => force),
    opening: range(({ opening: opening2 }) => opening2),
    work: range(({ work: work2 }) => work2),
    failures: failures2,
    notes: law.notes,
    sources: law.sources
  };
}
function verdictShares(firsts, weights) {
  const total3 = weights.reduce((sum5, weight) => sum5 + weight, 0);
  const share2 = (kind2) => firsts.reduce((sum5, first2, i) => first2 === kind2 ? sum5 + weights[i] : sum5, 0) / total3;
  return {
    bond: share2("bond"),
    threadAtCrack: share2("threadAtCrack"),
    threadAtAnchor: share2("threadAtAnchor"),
    threadPullOut: share2("threadPullOut"),
    arm: share2("arm")
  };
}

// packages/core/src/fracture/coupon/predict-pulled.ts
function predictPulled(coupon, draws, tests, advice) {
  const { specimen, stitching } = coupon;
  const all = foretell(coupon, draws);
  const { law, rows, result, reading, values, nominal } = all;
  const weights = weightsBy(tests, draws, { coupon, values });
  const estimated = (value, of) => ({
    nominal: value,
    ...weightedInterval(values.map(of), weights)
  });
  const bridged = rows.length > 0 ? stitching : void 0;
  const measured2 = bridged?.measured !== void 0;
  const plain6 = bridged && law && couponToughness(coupon, bridged, law);
  const zone = plain6 && couponZone(plain6, result, reading, measured2);
  const steady = steadyValue(coupon, values, weights, plain6, zone);
  const bond = result.events.find(({ kind: kind2 }) => kind2 === "bond");
  const met = bridged && patternMet(bridged);
  const room = bridged && specimen.kind !== "enf" ? { length: stitchedGrowth(specimen, bridged), measured: measured2 } : void 0;
  const beyond = advice && met ? noReturn(coupon, nominal, all.nearby) : void 0;
  const { ceiling } = fastValue(nominal.coupon);
  return {
    coupon,
    rows,
    ...law && { law },
    ...law && bridged && { bridging: bridgingRange(law, stitchSamples(all.samples), weights) },
    ...met && { penetrationDensity: met.density },
    result,
    ...bond && { onset: { load: bond.load, displacement: bond.displacement } },
    verdict: result.verdict,
    shares: verdictShares(
      values.map(({ first: first2 }) => first2),
      weights
    ),
    peakForce: estimated(result.peakForce, (one) => one.peakForce),
    toughness: {
      ...steady.value && { steady: steady.value },
      specimen: estimated(reading.toughness, (one) => one.toughness),
      ...specimen.kind !== "enf" && Number.isFinite(ceiling) && { ceiling }
    },
    ...zone && { zone },
    ...plain6?.discreteness && { discreteness: plain6.discreteness.ratio },
    changes: advice ? couponChanges(coupon, singleDraw(coupon), all.nearby) : [],
    ...beyond !== void 0 && met && { pointOfNoReturn: beyond * met.density },
    densities: advice && met ? couponDensities(met.density, all.samples, weights, all.model, room) : [],
    ...tests.length > 0 && { calibrated: true },
    notes: uniqueNotes([
      ...law?.notes ?? [],
      ...result.notes,
      ...plain6?.notes ?? [],
      ...steady.notes,
      readingNote(reading),
      ...couponNotes(coupon, draws.length, rows.length),
      ...tests.length > 0 ? calibrationNotes(tests.length, weights) : []
    ]),
    sources: uniqueSources(law?.sources ?? [], result.sources, plain6?.sources ?? [], ownSources)
  };
}
function stitchSamples(samples) {
  return samples.flatMap(
    ({ coupon: { stitches }, failure: failure2 }) => stitches && failure2 ? [{ ...stitches, failure: failure2 }] : []
  );
}
var ownSources = ["common-practice", "selvage-2026-derivation"];

// packages/core/src/fracture/specimen/wedge.ts
var notes3 = [
  {
    level: "assumption",
    text: "One split plane, a straight edge, a rigid wedge that holds the mouth open, no friction, no rate or overshoot of a fast split."
  },
  {
    level: "assumption",
    text: "Arms are linear beams with shear on the elastic bed of their bond; both carry the same moment."
  }
];
var pieces = 60;
var left3 = 4;
function simulateWedge(edge) {
  const { arms: arms2, width, depth, opening: opening2, bondToughness, refine = 1 } = edge;
  checkArms(arms2);
  requirePositive("width", width, inMillimetres);
  requirePositive("depth", depth, inMillimetres);
  requirePositive("opening", opening2, inMillimetres);
  requirePositive("bondToughness", bondToughness, (value) => `${value} J/m\xB2`);
  requireRefine(refine);
  const pair2 = openingPair(arms2);
  const root2 = rootLength(pair2);
  const end2 = depth - left3 * root2;
  const rows = modelRows(edge.rows, depth, "depth");
  const naturalLength = naturalSplit(pair2, opening2, bondToughness, end2);
  const begin = edge.crackLength ?? Math.min(rows[0]?.place ?? end2, naturalLength > 0 ? naturalLength : end2) / 10;
  requireInside("crackLength", begin, end2, "depth of sound bond");
  const strain2 = openingStrain(edge, rows);
  const model = {
    chain: openingChain(
      pair2,
      width,
      depth,
      rows.map(({ place }) => place)
    ),
    rows,
    tipLimit: Math.sqrt(2 * bondToughness / bedStiffness(pair2)),
    bondWork: bondToughness * width,
    longest: end2,
    ...strain2
  };
  const equilibrium2 = equilibriumOf(model);
  const seen = Float64Array.from(rows, ({ law }) => law.firm);
  const first2 = equilibrium2(begin, 1e-9 * opening2, seen, new Float64Array(rows.length));
  const gaps = rows.map(({ place }, i) => place - (rows[i - 1]?.place ?? 0)).filter((gap) => gap > 0);
  const longest = Math.min(naturalLength > 0 ? naturalLength : end2, ...gaps) / pieces / refine;
  const settled2 = settle(model, equilibrium2, first2, opening2, {
    first: longest / 8,
    longest,
    enough: Number.POSITIVE_INFINITY
  });
  const { state, passings } = settled2;
  const behind = rows.findLast(({ place }) => place <= state.crackLength);
  const thickness = Math.max(arms2[0].thickness, arms2[1].thickness);
  const arrested = state.crackLength < end2;
  const near5 = behind !== void 0 && arrested && state.crackLength - behind.place < thickness;
  const armStrain = model.strain(state);
  const warnings = [];
  if (armStrain > strain2.strainLimit) {
    warnings.push({
      level: "warning",
      text: `An arm breaks: surface strain ${percent3(armStrain)}, limit ${percent3(strain2.strainLimit)}.`
    });
  }
  return {
    splitLength: state.crackLength,
    arrested,
    ...near5 && { atRow: behind.index },
    naturalLength,
    load: state.load,
    rows: rows.map(({ place, law, index }, j) => {
      const w = state.opening[j];
      const m = state.largest[j];
      const force = forceAfter(law, w, m);
      return { row: index, position: place, opening: w, force, broken: m > law.peak };
    }),
    broken: passings.flatMap(({ row, crackLength }) => {
      const one = rows[row];
      return one === void 0 ? [] : [{ kind: one.failure, row: one.index, splitLength: crackLength }];
    }),
    armStrain,
    notes: uniqueNotes([...notes3, ...warnings]),
    sources: ["kanninen-1973", "selvage-2026-derivation"]
  };
}
var percent3 = (strain2) => `${(100 * strain2).toFixed(2)} %`;

// packages/core/src/fracture/coupon/wedge-samples.ts
var wedgeSplits = 60;
function wedgeVerdict({ broken, armStrain, rows }, { specimen }) {
  const limit5 = Math.min(
    ...specimen.arms.map(
      ({ failureStrain: strain2 }) => strain2 ? Math.min(strain2.tension, strain2.compression) : Number.POSITIVE_INFINITY
    )
  );
  if (armStrain > limit5) return "arm";
  return rows.length > 0 ? broken.at(-1)?.kind ?? "bond" : "bond";
}
function splitCoupon(coupon) {
  const { specimen, stitching } = coupon;
  const rows = couponRows(coupon, stitching && couponLaw("wedge", stitching));
  return { split: simulateWedge({ ...specimen, rows }), rows };
}
function wedgeSamples(coupon, draws) {
  return draws.slice(0, wedgeSplits).map((draw) => {
    const drawn2 = sampledCoupon(coupon, draw);
    try {
      const { split } = splitCoupon(drawn2);
      return { splitLength: split.splitLength, load: split.load, first: wedgeVerdict(split, drawn2) };
    } catch (error) {
      if (error instanceof SelvageError) return void 0;
      throw error;
    }
  });
}

// packages/core/src/fracture/coupon/predict-wedge.ts
function predictWedge(coupon, draws, tests) {
  const { stitching } = coupon;
  const { split, rows } = splitCoupon(coupon);
  const law = stitching && couponLaw("wedge", stitching);
  const few = draws.slice(0, wedgeSplits);
  const foretold = wedgeSamples(coupon, few);
  const all = weightsBy(tests, few);
  const weights = all.filter((_, i) => foretold[i] !== void 0);
  const splits = foretold.filter((one) => one !== void 0);
  const met = stitching && rows.length > 0 ? patternMet(stitching) : void 0;
  const range = (nominal, of) => ({
    nominal,
    ...weightedInterval(splits.length > 0 ? splits.map(of) : [nominal], splits.length > 0 ? weights : [1])
  });
  const first2 = wedgeVerdict(split, coupon);
  return {
    coupon,
    rows,
    ...law && { law },
    ...law && stitching && { bridging: bridgingRange(law, stitchNumbers("wedge", stitching, few), all) },
    ...met && { penetrationDensity: met.density },
    wedge: split,
    verdict: { first: first2, load: split.load },
    shares: verdictShares(
      splits.length > 0 ? splits.map((one) => one.first) : [first2],
      splits.length > 0 ? weights : [1]
    ),
    peakForce: range(split.load, ({ load }) => load),
    splitLength: range(split.splitLength, ({ splitLength }) => splitLength),
    changes: [],
    densities: [],
    ...tests.length > 0 && { calibrated: true },
    notes: uniqueNotes([
      ...law?.notes ?? [],
      ...split.notes,
      ...couponNotes(coupon, few.length, rows.length),
      ...tests.length > 0 ? calibrationNotes(tests.length, all) : []
    ]),
    sources: uniqueSources(law?.sources ?? [], split.sources, ownSources)
  };
}

// packages/core/src/fracture/coupon/predict-coupon.ts
function predictCoupon(coupon, options = {}) {
  const { samples = 1e3, seed = 1, tests = [] } = options;
  for (const one of tests) {
    checkTest(one.test);
    checkBondRange(one.coupon);
  }
  checkBondRange(coupon);
  const draws = drawSamples({ samples, seed });
  const bearing = tests.filter((one) => bearsOn(one.coupon, coupon));
  return isWedge(coupon) ? predictWedge(coupon, draws, bearing) : predictPulled(coupon, draws, bearing, options.advice ?? true);
}
var isWedge = (coupon) => coupon.specimen.kind === "wedge";

// packages/core/src/design/assemble/constituents.ts
var taken = {
  fibre: ["E1", "E2", "G12", "nu12", "nu23", "density", "alpha1", "alpha2"],
  resin: ["E", "nu", "density", "alpha", "beta"],
  ply: [
    "E1",
    "E2",
    "G12",
    "nu12",
    "nu23",
    "density",
    "Vf",
    "Xt",
    "Xc",
    "Yt",
    "Yc",
    "S",
    "alpha1",
    "alpha2",
    "beta1",
    "beta2"
  ],
  fabric: ["arealMass"],
  core: ["E", "G", "nu", "S", "density"],
  thread: ["linearDensity", "density", "tenacity", "modulus"]
};
function useLibrary(context, kind2, name, entry2) {
  use(context, {
    name,
    kind: kind2,
    label: entry2.label,
    library: name,
    sources: entrySources(entry2, taken[kind2]),
    overridden: [],
    notes: entryNotes(entry2, taken[kind2])
  });
}
function useOwn(context, kind2, name, entry2, base2) {
  const { label, source, basis, note: note2, from } = entry2;
  const own2 = (key) => entry2[key] !== void 0;
  const fromLibrary = taken[kind2].filter((key) => !own2(key));
  use(context, {
    name,
    kind: kind2,
    overridden: base2 === void 0 ? [] : ["thickness", ...taken[kind2]].filter(own2),
    sources: base2 === void 0 ? [] : entrySources(base2, fromLibrary),
    notes: base2 === void 0 ? [] : entryNotes(base2, fromLibrary),
    ...label === void 0 ? {} : { label },
    ...source === void 0 ? {} : { source },
    ...basis === void 0 ? {} : { basis },
    ...note2 === void 0 ? {} : { note: note2 },
    ...from === void 0 ? {} : { library: from }
  });
}
function ownNames(context, kind2) {
  return Object.entries(context.design.materials ?? {}).filter(([, entry2]) => entry2.kind === kind2).map(([name]) => name);
}
function demandFibre(fibre2) {
  const faults2 = fibreFaults(fibre2);
  if (faults2.length > 0) throw new SelvageError(faults2);
  return fibre2;
}
function findFibre(context, name, path) {
  const entry2 = own(context.design.materials, name);
  if (entry2?.kind === "fibre") {
    useOwn(context, "fibre", name, entry2);
    const { kind: _, label: __, source: ___, basis: ____, note: _____, ...values } = entry2;
    const fibre2 = defined({ name, ...values, sources: [] });
    return attempt(context, ["materials", name], () => demandFibre(fibre2), entry2);
  }
  const found = Object.hasOwn(library.fibres, name) ? libraryFibre(name) : void 0;
  if (found === void 0) {
    context.problems.push(
      unknownName("fibre", name, [...ownNames(context, "fibre"), ...Object.keys(library.fibres)], path)
    );
    return void 0;
  }
  useLibrary(context, "fibre", name, library.fibres[name]);
  return found;
}
function findResin(context, name, path) {
  const entry2 = own(context.design.materials, name);
  if (entry2?.kind === "resin") {
    useOwn(context, "resin", name, entry2);
    const { kind: _, label: __, source: ___, basis: ____, note: _____, ...values } = entry2;
    return defined({ name, ...values, sources: [] });
  }
  const found = Object.hasOwn(library.resins, name) ? libraryResin(name) : void 0;
  if (found === void 0) {
    context.problems.push(
      unknownName("resin", name, [...ownNames(context, "resin"), ...Object.keys(library.resins)], path)
    );
    return void 0;
  }
  useLibrary(context, "resin", name, library.resins[name]);
  return found;
}
function defined(value) {
  return Object.fromEntries(Object.entries(value).filter(([, part]) => part !== void 0));
}

// packages/core/src/design/assemble/coupon-keys.ts
var neededBy = {
  dcb: [
    ["length", "the length from the loads to the end of the bond"],
    ["crackLength", "the crack at the start, from the loads"]
  ],
  peel: [
    ["length", "the length from the grips to the end of the bond"],
    ["crackLength", "the crack at the start, from the grips"]
  ],
  enf: [
    ["span", "the distance of the supports"],
    ["crackLength", "the crack at the start, from the support at the cracked end"]
  ],
  wedge: [
    ["opening", "the opening at which the edge is held"],
    ["depth", "the depth of the bond from the edge"]
  ]
};
var owners = [
  ["length", ["dcb", "peel"]],
  ["span", ["enf"]],
  ["loadSpan", ["enf"]],
  ["overhang", ["enf"]],
  ["friction", ["enf"]],
  ["opening", ["wedge"]],
  ["depth", ["wedge"]],
  ["until", ["dcb", "enf", "peel"]],
  ["test", ["dcb", "enf", "peel"]]
];
var ofStitches = ["growth", "firstRow", "stitchedLength"];
function keyProblems(entry2, path) {
  const given = (key) => entry2[key] !== void 0;
  const missing5 = neededBy[entry2.type].filter(([key]) => !given(key));
  const foreign2 = owners.filter(([key, types]) => given(key) && !types.includes(entry2.type));
  const idle = entry2.stitching === void 0 ? ofStitches.filter(given) : [];
  return [
    ...missing5.map(([key, what]) => ({
      code: "missing-key",
      message: `missing \`${key}\` in \`${path.join(".")}\`, a coupon of type ${entry2.type}`,
      allowed: what,
      path,
      atKey: true
    })),
    ...foreign2.map(([key, types]) => ({
      code: "contradiction",
      message: `\`${key}\` is for ${types.join(" and ")}, this coupon is of type ${entry2.type}`,
      allowed: `\`${key}\` only with \`type: ${types.join("` or `type: ")}\``,
      path: [...path, key],
      atKey: true
    })),
    ...idle.map((key) => ({
      code: "contradiction",
      message: `\`${key}\` is given, but the coupon is not stitched`,
      allowed: `\`${key}\` only beside \`stitching\``,
      path: [...path, key],
      atKey: true
    })),
    ...rangeProblems(entry2, path)
  ];
}
function rangeProblems({ bondToughness, bondToughnessRange }, path) {
  if (bondToughnessRange === void 0) return [];
  const [low, high] = bondToughnessRange;
  if (low < high && low <= bondToughness && bondToughness <= high) return [];
  return [
    {
      code: "contradiction",
      message: low < high ? "`bondToughnessRange` does not hold `bondToughness`" : "`bondToughnessRange` is not a range",
      allowed: "[lower, upper], the first below the second and `bondToughness` between them",
      path: [...path, "bondToughnessRange"],
      also: [{ label: "bondToughness", path: [...path, "bondToughness"] }]
    }
  ];
}

// packages/core/src/design/assemble/coupon-specimen.ts
var lengthsOf = ({ units: units2 = "metric" }) => (length2) => formatQuantity(length2, "length", { units: units2 });
function crackEnd({ type, length: length2 = 0, span = 0, loadSpan = 0, depth = 0 }) {
  if (type === "wedge") return { place: depth, words: "`depth`" };
  if (type !== "enf") return { place: length2, words: "`length`" };
  return loadSpan === 0 ? { place: span / 2, words: "the load at half the `span`" } : { place: (span + loadSpan) / 2, words: "the load that is farther away" };
}
function bondEnd({ type, length: length2 = 0, span = 0, overhang = 0, depth = 0 }) {
  if (type === "wedge") return depth;
  return type === "enf" ? span + overhang : length2;
}
function placeProblems(entry2, path, show) {
  const { crackLength, span = 0, loadSpan = 0, until } = entry2;
  if (entry2.type === "enf" && loadSpan >= span) {
    return [
      {
        code: "out-of-range",
        message: `loadSpan = ${show(loadSpan)}, must be below the span of ${show(span)}`,
        allowed: `above 0, below ${show(span)}`,
        path: [...path, "loadSpan"]
      }
    ];
  }
  const end2 = crackEnd(entry2);
  const problems = [];
  const beyond = (value, key) => {
    if (value < end2.place) return;
    problems.push({
      code: "out-of-range",
      message: `${key.join(".")} = ${show(value)}, must end before ${end2.words} at ${show(end2.place)}`,
      allowed: `above 0, below ${show(end2.place)}`,
      path: [...path, ...key]
    });
  };
  if (crackLength !== void 0) beyond(crackLength, ["crackLength"]);
  if (until?.crackLength === void 0) return problems;
  beyond(until.crackLength, ["until", "crackLength"]);
  if (crackLength !== void 0 && until.crackLength <= crackLength) {
    problems.push({
      code: "out-of-range",
      message: `until.crackLength = ${show(until.crackLength)}, must be above the ${show(crackLength)} at the start`,
      allowed: `above ${show(crackLength)}, below ${show(end2.place)}`,
      path: [...path, "until", "crackLength"]
    });
  }
  return problems;
}
function specimenOf(entry2, arms2) {
  const { type, width, bondToughness, crackLength, length: length2, span, loadSpan, overhang, friction, opening: opening2, depth } = entry2;
  const until = entry2.until === void 0 ? void 0 : defined(entry2.until);
  return defined({
    kind: type,
    arms: arms2,
    width,
    bondToughness,
    ...{ crackLength, length: length2, span, loadSpan, overhang, friction, opening: opening2, depth, until }
  });
}

// packages/core/src/design/assemble/coupon-rows.ts
var origins = {
  dcb: "the loads",
  enf: "the support",
  peel: "the grips",
  wedge: "the edge"
};
function rowsInCoupon(coupon) {
  const { entry: entry2, path, show } = coupon;
  const { name, plan } = coupon.plan;
  const { pattern: pattern2 } = plan;
  const { type, growth: growth2 = "across", stitchedLength } = entry2;
  const end2 = bondEnd(entry2);
  const start = type === "wedge" ? 0 : entry2.crackLength ?? 0;
  const byOffset = pattern2.kind === "rows" && growth2 === "across";
  demandSense(entry2, path, pattern2);
  const { firstRow, notes: notes4 } = byOffset ? offsetRows(coupon, pattern2.rows) : firstRowOf(entry2, pattern2, show);
  const from = start + firstRow;
  if (!byOffset && (from >= end2 || from <= 0)) {
    fail({
      code: "out-of-range",
      message: `the first row lies ${show(from)} from ${origins[type]}, the bond ends at ${show(end2)}`,
      allowed: `firstRow ${type === "wedge" ? "above 0, " : ""}below ${show(end2 - start)}`,
      path: entry2.firstRow === void 0 ? [...path, "stitching"] : [...path, "firstRow"]
    });
  }
  if (stitchedLength !== void 0 && from + stitchedLength > end2 * (1 + 1e-9)) {
    fail({
      code: "out-of-range",
      message: `the stitched stretch goes to ${show(from + stitchedLength)}, the bond ends at ${show(end2)}`,
      allowed: `stitchedLength at most ${show(end2 - from)}`,
      path: [...path, "stitchedLength"]
    });
  }
  const to = Math.min(stitchedLength === void 0 ? end2 : from + stitchedLength, end2);
  const lead = pattern2.kind === "zigzag" && growth2 === "across" ? pattern2.swing / 2 : 0;
  const places = { pattern: pattern2, growth: growth2, from, to, origin: byOffset ? 0 : from + lead };
  const rows = placed(
    [...path, "stitching"],
    () => rowsAcross({ ...places, width: entry2.width, curve: { opening: [], force: [] }, failure: "threadAtCrack" })
  );
  if (rows.length === 0) {
    fail({
      code: "out-of-range",
      message: `no stitch of \`stitching.${name}\` lies in the coupon between ${show(from)} and ${show(to)}`,
      allowed: "a plan with a row in this stretch, or an unstitched coupon",
      path: [...path, "stitching"]
    });
  }
  return { ...places, notes: notes4 };
}
function demandSense({ type, growth: growth2, firstRow }, path, pattern2) {
  if (pattern2.kind !== "rows") return;
  const refuse2 = (key, message, allowed) => fail({ code: "contradiction", message, allowed, path: [...path, key], atKey: true });
  if (type === "wedge" && growth2 === "along")
    refuse2("growth", "a split from the edge crosses rows that follow the edge", "`growth: across`, or none");
  if (growth2 !== "along" && firstRow !== void 0)
    refuse2("firstRow", "`firstRow` is given beside the offsets of the rows", "the offsets of the stitch plan alone");
}
function firstRowOf(entry2, pattern2, show) {
  if (entry2.firstRow !== void 0) return { firstRow: entry2.firstRow, notes: [] };
  const distance2 = pattern2.kind === "rows" ? pattern2.rows[0]?.pitch ?? 0 : entry2.growth === "along" ? pattern2.pitch : pattern2.rowSpacing;
  const text3 = `the first row is taken to lie one distance of rows, ${show(distance2)}, from ${entry2.type === "wedge" ? "the edge" : "the end of the crack"}: no \`firstRow\` is given`;
  return { firstRow: distance2, notes: [{ level: "assumption", text: text3 }] };
}
function offsetRows({ entry: entry2, path, plan: { name }, show }, rows) {
  const offsets = rows.map(({ offset }) => offset);
  const end2 = bondEnd(entry2);
  const outside3 = offsets.findIndex((offset) => offset >= end2);
  if (outside3 >= 0) {
    fail({
      code: "out-of-range",
      message: `row ${outside3 + 1} of \`stitching.${name}\` lies ${show(offsets[outside3] ?? 0)} from ${origins[entry2.type]}, the bond ends at ${show(end2)}`,
      allowed: `rows below ${show(end2)}`,
      path: [...path, "stitching"],
      also: [{ label: `row ${outside3 + 1}`, path: ["stitching", name, "rows", outside3, "offset"] }]
    });
  }
  const start = entry2.crackLength ?? 0;
  const cut = entry2.type === "wedge" ? 0 : offsets.filter((offset) => offset < start).length;
  const text3 = `${cut === 1 ? "one row lies" : `${cut} rows lie`} in the crack at the start, at less than ${show(start)} from ${origins[entry2.type]}: taken as cut`;
  return { firstRow: 0, notes: cut === 0 ? [] : [{ level: "assumption", text: text3 }] };
}

// packages/core/src/design/assemble/penetration.ts
function penetrationOf({ plan, summary, bridging }, thickness, crackDepth) {
  const { type, strands = 1, needleThread, underThread } = plan;
  const { parameters, anchors, bends } = bridging;
  return defined({
    type: withStrands(stitchType(type), strands),
    needleThread,
    underThread,
    thickness,
    crackDepth,
    anchors,
    bends,
    pitch: bends === "yielding" ? summary.meanRun : void 0,
    parameters
  });
}

// packages/core/src/design/assemble/coupon-stitching.ts
function couponStitching({ entry: entry2, path, plan, stack, show }) {
  const [upper, lower] = stack.arms;
  const penetration = penetrationOf(plan, upper + lower, upper);
  const { legAngle, measured: measured2, measuredVariation } = plan.bridging;
  const { notes: notes4, ...places } = rowsInCoupon({ entry: entry2, path, plan, show });
  return {
    stitching: defined({ ...places, penetration, legAngle, measured: measured2, measuredVariation }),
    notes: [...notes4, ...thicknessNotes(plan, stack, show)]
  };
}
function demandStrength(design, { name, plan, bridging }) {
  if (bridging.measured !== void 0) return;
  const { needleThread, underThread = needleThread } = plan;
  const threads = hasUnderThread(stitchType(plan.type)) ? [needleThread, underThread] : [needleThread];
  for (const thread of threads) {
    const missing5 = ["tenacity", "modulus"].filter((key) => thread[key] === void 0);
    if (missing5.length === 0) continue;
    const keys = missing5.map((key) => `\`${key}\``).join(" and ");
    const declared = own(design.threads, thread.name) !== void 0;
    fail({
      code: "missing-key",
      message: `thread \`${thread.name}\` of \`stitching.${name}\` has no ${keys}: what its stitches hold cannot be computed`,
      allowed: "a thread with `tenacity` and `modulus`, or a measured curve under `bridging` of the stitch plan",
      ...declared ? { also: [{ label: `thread ${thread.name}`, path: ["threads", thread.name] }] } : {}
    });
  }
}
function thicknessNotes({ name }, { arms: [upper, lower], planned }, show) {
  const whole2 = upper + lower;
  if (planned === void 0 || Math.abs(planned.thickness - whole2) <= 1e-6 * whole2) return [];
  const text3 = `the stitch goes through both arms, ${show(whole2)}, and the crack ${show(upper)} below its needle side; laminate ${planned.name} of stitch plan ${name} is ${show(planned.thickness)} thick`;
  return [{ level: "assumption", text: text3 }];
}

// packages/core/src/design/assemble/coupons.ts
function assembleCoupons(context, named4) {
  return Object.entries(context.design.coupons ?? {}).flatMap(
    ([name, entry2]) => assembleCoupon(context, named4, name, entry2) ?? []
  );
}
function assembleCoupon(context, named4, name, entry2) {
  const path = ["coupons", name];
  const before2 = context.problems.length;
  const names4 = typeof entry2.arms === "string" ? [entry2.arms, entry2.arms] : entry2.arms;
  const armPath = (i) => [...path, "arms", ...typeof entry2.arms === "string" ? [] : [i]];
  names4.forEach((arm2, i) => {
    if (!named4.laminates.has(arm2))
      context.problems.push(unknownName("laminate", arm2, [...named4.laminates.keys()], armPath(i)));
  });
  if (entry2.stitching !== void 0 && !named4.stitching.has(entry2.stitching)) {
    const known = [...named4.stitching.keys()];
    context.problems.push(unknownName("stitch plan", entry2.stitching, known, [...path, "stitching"]));
  }
  const keys = keyProblems(entry2, path);
  const complete = !keys.some(({ code }) => code === "missing-key");
  const show = lengthsOf(context.design);
  const places = complete ? placeProblems(entry2, path, show) : [];
  context.problems.push(...keys, ...places);
  const plan = entry2.stitching === void 0 ? void 0 : named4.stitching.get(entry2.stitching);
  if (plan !== void 0) attempt(context, [...path, "stitching"], () => demandStrength(context.design, plan));
  const [upper, lower] = names4.map((arm2) => named4.laminates.get(arm2));
  if (upper === void 0 || lower === void 0) return void 0;
  const arms2 = armsOf(context, entry2, [upper, lower], armPath);
  const fits = complete && places.length === 0;
  const stitched2 = plan === void 0 || !fits ? void 0 : attempt(
    context,
    path,
    () => couponStitching({ entry: entry2, path, plan, show, stack: stackOf(named4, plan, [upper, lower]) })
  );
  if (arms2 === void 0 || context.problems.length > before2 || entry2.stitching !== void 0 && stitched2 === void 0)
    return void 0;
  const { bondToughnessRange: range, test } = entry2;
  return defined({
    name,
    title: entry2.title,
    note: entry2.note,
    coupon: defined({
      specimen: specimenOf(entry2, [plain4(arms2[0]), plain4(arms2[1])]),
      stitching: stitched2?.stitching,
      bondToughnessRange: range === void 0 ? void 0 : { low: range[0], high: range[1] }
    }),
    arms: names4,
    stitching: entry2.stitching,
    test: test === void 0 ? void 0 : defined(test),
    notes: uniqueNotes([
      ...unlikeFaces(names4, upper),
      ...stitched2?.notes ?? [],
      ...arms2.flatMap(({ notes: notes4 }) => notes4)
    ]),
    sources: uniqueSources(...arms2.map(({ sources }) => sources))
  });
}
function stackOf({ laminates }, { laminate: laminate2 }, arms2) {
  const planned = laminate2 === void 0 ? void 0 : laminates.get(laminate2);
  return {
    arms: [arms2[0].laminate.thickness, arms2[1].laminate.thickness],
    ...planned === void 0 ? {} : { planned: { name: planned.name, thickness: planned.laminate.thickness } }
  };
}
function armsOf(context, { across: across2, breaking }, [upper, lower], path) {
  const arm2 = ({ laminate: laminate2 }, i, crackFace) => attempt(context, path(i), () => armOf(laminate2, { crackFace, ...defined({ across: across2, breaking }) }));
  const [first2, second2] = [arm2(upper, 0, "bottom"), arm2(lower, 1, "top")];
  return first2 === void 0 || second2 === void 0 ? void 0 : [first2, second2];
}
var plain4 = ({ notes: _, sources: __, ...arm2 }) => arm2;
function unlikeFaces([upper, lower], { laminate: laminate2 }) {
  if (upper !== lower || diagnosis(laminate2).symmetric) return [];
  const text3 = `both arms are laminate ${upper} as written: the crack lies at the bag side of the upper one and at the tool side of the lower one, which differ`;
  return [{ level: "assumption", text: text3 }];
}

// packages/core/src/design/assemble/claims.ts
var claimKeys = ["fibre", "resin", "architecture", "warpShare"];
var missing = (path, key, allowed) => fail({ code: "missing-key", message: `missing \`${key}\` in \`${path.join(".")}\``, allowed, path, atKey: true });
function demandUse(entry2, path, compared2, architecture) {
  const idle = compared2 ? void 0 : claimKeys.find((key) => entry2[key] !== void 0);
  if (idle !== void 0) {
    fail({
      code: "missing-key",
      message: `\`${idle}\` has no effect without \`fibre\` and \`resin\``,
      hint: "give both too, or leave it out",
      path: [...path, idle],
      atKey: true
    });
  }
  if (entry2.warpShare !== void 0 && architecture !== "woven") {
    fail({
      code: "contradiction",
      message: `\`warpShare\` is for a woven ply, this one is ${architecture}`,
      allowed: "`warpShare` only with `architecture: woven`",
      hint: "leave it out, or is the architecture another?",
      path: [...path, "warpShare"],
      atKey: true,
      also: [{ label: architecture, path: [...path, "architecture"] }]
    });
  }
}
function ownClaim(context, entry2, path, listed4) {
  const row = entry2.from === void 0 ? void 0 : entryOf(library.plies, entry2.from);
  const named4 = (key) => entry2[key] ?? row?.[key] ?? missing(path, key, `\`${key}\` beside \`${key === "fibre" ? "resin" : "fibre"}\``);
  const [fibreName, resinName] = [named4("fibre"), named4("resin")];
  const fibre2 = findFibre(context, fibreName, [...path, "fibre"]);
  const resin2 = findResin(context, resinName, [...path, "resin"]);
  const { fibreVolumeFraction } = listed4;
  if (fibreVolumeFraction === void 0)
    return missing(path, "fibreVolumeFraction", "the fibre fraction at which the ply is listed, to compare it");
  if (fibre2 === void 0 || resin2 === void 0) return void 0;
  const { architecture = row?.architecture ?? "ud", warpShare } = entry2;
  const claimed = { listed: listed4, fibre: fibre2, resin: resin2, fibreVolumeFraction, architecture, warpShare, namedBy: "design" };
  return defined(claimed);
}
function libraryClaim({ from, E1, fibreVolumeFraction }, listed4) {
  const row = from === void 0 ? void 0 : entryOf(library.plies, from);
  if (row?.fibre === void 0 || row.resin === void 0 || E1 !== void 0 || fibreVolumeFraction !== void 0)
    return void 0;
  const { fibreVolumeFraction: fraction } = listed4;
  const [fibre2, resin2] = [libraryFibre(row.fibre), libraryResin(row.resin)];
  if (fraction === void 0) return void 0;
  const { architecture = "ud" } = row;
  return { listed: listed4, fibre: fibre2, resin: resin2, fibreVolumeFraction: fraction, architecture, namedBy: "library" };
}
function remark(context, name, notes4, instead) {
  const key = `ply ${name}`;
  const known = context.used.get(key);
  if (known === void 0 || notes4.length === 0) return;
  const kept3 = instead ? known.notes.filter((note2) => note2.level !== "warning") : known.notes;
  context.used.set(key, { ...known, notes: [...kept3, ...notes4] });
}
function claimOf(context, name, entry2, listed4) {
  const path = ["materials", name];
  const own2 = entry2.fibre !== void 0 || entry2.resin !== void 0;
  const claimed = own2 ? ownClaim(context, entry2, path, listed4) : libraryClaim(entry2, listed4);
  if (own2 && claimed === void 0) return void 0;
  demandUse(entry2, path, own2, claimed?.architecture ?? "ud");
  if (claimed === void 0) return void 0;
  const { lowest: lowest2, highest } = fibreFractionLimits;
  const { fibreVolumeFraction: fraction } = claimed;
  if (fraction < lowest2 || fraction > highest) {
    const text3 = `${name}: not compared with its constituents, fibre fraction ${Number((fraction * 100).toPrecision(4))} % is outside ${lowest2 * 100} to ${highest * 100} %`;
    remark(context, name, [{ level: "warning", text: text3 }], false);
    return void 0;
  }
  const found = plyConsistency({ ...listed4, name }, claimed);
  remark(context, name, found.notes, entry2.from !== void 0);
  return { kind: "ply", name, ...claimed, found };
}

// packages/core/src/design/assemble/fabric-notes.ts
var percent4 = (fraction) => `${(fraction * 100).toFixed(1)} %`;
var sameFraction = 5e-3;
function strengthNotes(fabric2, fraction) {
  const { name, strengths: strengths2, layers = [], fibreVolumeFraction: stated = fraction } = fabric2;
  if (strengths2 === void 0 && layers.every((layer) => layer.strengths === void 0)) return [];
  const scaled3 = Math.abs(stated - fraction) <= sameFraction ? {
    level: "assumption",
    text: `${name}: strengths as given, taken to hold at fibre fraction ${percent4(fraction)}; they are not scaled with it`
  } : {
    level: "warning",
    text: `${name}: strengths are given for fibre fraction ${percent4(stated)} and used at ${percent4(fraction)}; they are not scaled with it`
  };
  const borrowed = strengths2 !== void 0 && layers.some((layer) => layer.fibre !== void 0 && layer.fibre !== fabric2.fibre && layer.strengths === void 0);
  const text3 = `${name}: one set of strengths is used for layers of different fibres; give each layer its own`;
  return borrowed ? [scaled3, { level: "warning", text: text3 }] : [scaled3];
}
var fabricNotes = (fabric2, fraction) => [
  ...fabric2.remarks ?? [],
  ...strengthNotes(fabric2, fraction)
];

// packages/core/src/design/assemble/fabric-faults.ts
var owners2 = [
  ["weave", "woven"],
  ["warpShare", "woven"],
  ["crimpFactor", "woven"],
  ["yarnCount", "woven"],
  ["weftCount", "woven"],
  ["harness", "woven"],
  ["yarnLinearDensity", "woven"],
  ["weftLinearDensity", "woven"],
  ["weftFibre", "woven"],
  ["layers", "multiaxial"],
  ["matModel", "mat"]
];
var against = (place, words3) => ({
  code: "contradiction",
  ...words3,
  path: [...place.path, ...place.key.split(".")],
  atKey: true,
  also: [{ label: place.label, path: [...place.path, place.other] }]
});
var without3 = (path, key, other) => ({
  code: "missing-key",
  message: `\`${key}\` has no effect without \`${other}\``,
  hint: `give \`${other}\` too, or leave it out`,
  path: [...path, key],
  atKey: true
});
function* foreign(entry2, path, { architecture }) {
  const place = entry2.architecture === void 0 ? "from" : "architecture";
  for (const [key, owner] of owners2) {
    if (entry2[key] === void 0 || architecture === owner) continue;
    const message = `\`${key}\` is for a ${owner} fabric, this one is ${architecture}`;
    const allowed = `\`${key}\` only with \`architecture: ${owner}\``;
    const hint = "leave it out, or is the architecture another?";
    yield against({ path, key, other: place, label: architecture }, { message, allowed, hint });
  }
}
function* weaveFaults(entry2, path, { weave }) {
  const { crimpFactor, yarnCount, harness } = entry2;
  if (crimpFactor !== void 0 && yarnCount !== void 0) {
    const message = "`yarnCount` and `crimpFactor` both decide the crimp";
    const allowed = "the factor, or the count from which it follows";
    const place = { path, key: "yarnCount", other: "crimpFactor", label: "the factor" };
    yield against(place, { message, allowed, hint: "keep a measured factor, else the count" });
  }
  if (yarnCount === void 0) {
    for (const key of ["weftCount", "harness", "yarnLinearDensity"])
      if (entry2[key] !== void 0) yield without3(path, key, "yarnCount");
  }
  if (entry2.weftLinearDensity !== void 0 && entry2.yarnLinearDensity === void 0)
    yield without3(path, "weftLinearDensity", "yarnLinearDensity");
  if (entry2.warpShare !== void 0 && entry2.yarnLinearDensity !== void 0) {
    const message = "`warpShare` and `yarnLinearDensity` both decide the share of the warp";
    const allowed = "the share, or the linear densities from which it follows";
    const place = { path, key: "warpShare", other: "yarnLinearDensity", label: "the yarns" };
    yield against(place, { message, allowed, hint: "leave one of them out" });
  }
  if (harness !== void 0) yield* harnessFaults(harness, weave, entry2, path);
}
function* harnessFaults(harness, weave, entry2, path) {
  try {
    yarnsPerRepeat(weave, harness);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const also = weave === void 0 ? [] : [{ label: weave, path: [...path, entry2.weave === void 0 ? "from" : "weave"] }];
    yield* error.problems.map((problem) => ({
      ...problem,
      hint: "leave it out for the usual one",
      path: [...path, "harness"],
      also
    }));
  }
}
function* modelFaults(entry2, path) {
  const { transverseModel, shearModel, xi, voidModel, voidFraction } = entry2;
  const rules2 = { E2: transverseModel, G12: shearModel ?? transverseModel };
  for (const key of ["E2", "G12"]) {
    const rule = rules2[key];
    if (xi?.[key] === void 0 || rule === void 0 || rule === "halpin-tsai") continue;
    const other = key === "G12" && shearModel !== void 0 ? "shearModel" : "transverseModel";
    const message = `\`xi.${key}\` belongs to the Halpin-Tsai equation, ${key} is by \`${rule}\``;
    const allowed = `\`xi.${key}\` only with \`${other}: halpin-tsai\``;
    const place = { path, key: `xi.${key}`, other, label: "the model" };
    yield against(place, { message, allowed, hint: "leave one of them out" });
  }
  if (voidModel !== void 0 && voidFraction === void 0) yield without3(path, "voidModel", "voidFraction");
}
function* layerFaults({ fibre: fibre2, strengths: strengths2, layers = [] }, path) {
  if (layers.length === 0) return;
  for (const [key, given] of [
    ["fibre", fibre2],
    ["strengths", strengths2]
  ]) {
    if (given === void 0 || layers.some((layer) => layer[key] === void 0)) continue;
    const message = `\`${key}\` of the fabric has no effect: every layer has its own`;
    const allowed = `\`${key}\` of the layers, or of the fabric for those without their own`;
    const place = { path, key, other: "layers", label: "the layers" };
    yield against(place, { message, allowed, hint: "leave it out" });
  }
}
function fabricFaults(entry2, path, decided) {
  const elsewhere = [...foreign(entry2, path, decided)];
  const woven = decided.architecture === "woven" ? [...weaveFaults(entry2, path, decided)] : [];
  const layered = decided.architecture === "multiaxial" ? [...layerFaults(entry2, path)] : [];
  return [...elsewhere, ...woven, ...layered, ...modelFaults(entry2, path)];
}

// packages/core/src/design/assemble/plies.ts
function base(context, what, entries, from, path) {
  if (from === void 0) return void 0;
  const found = entryOf(entries, from);
  if (found !== void 0) return found;
  context.problems.push(unknownName(what, from, Object.keys(entries), [...path, "from"]));
  return void 0;
}
var needed2 = (value, key, path, what) => value ?? fail({
  code: "missing-key",
  message: `missing \`${key}\` in \`${path.join(".")}\``,
  allowed: `${what}, here or by \`from\``,
  path,
  atKey: true
});
function resolvePly(context, name, entry2) {
  const path = ["materials", name];
  const from = base(context, "ply", library.plies, entry2.from, path);
  if (entry2.from !== void 0 && from === void 0) return void 0;
  const known = from === void 0 ? {} : entryValues(from);
  useOwn(context, "ply", name, entry2, from);
  const constant = (key) => needed2(entry2[key] ?? known[key], key, path, "a constant of the ply");
  const group2 = (keys) => keys.every((key) => known[key] !== void 0) ? Object.fromEntries(keys.map((key) => [key, known[key]])) : void 0;
  return placed(
    path,
    () => ply(
      defined({
        name,
        E1: constant("E1"),
        E2: constant("E2"),
        G12: constant("G12"),
        nu12: constant("nu12"),
        G13: entry2.G13,
        G23: entry2.G23,
        nu23: entry2.nu23 ?? (entry2.G23 === void 0 ? known.nu23 : void 0),
        thickness: entry2.thickness,
        density: entry2.density ?? known.density,
        fibreVolumeFraction: entry2.fibreVolumeFraction ?? known.Vf,
        strengths: entry2.strengths ?? group2(["Xt", "Xc", "Yt", "Yc", "S"]),
        expansion: entry2.expansion ?? group2(["alpha1", "alpha2"]),
        moistureExpansion: entry2.moistureExpansion ?? group2(["beta1", "beta2"]),
        sources: from === void 0 ? [] : entrySources(from)
      })
    ),
    entry2
  );
}
function resolveCore(context, name, entry2) {
  const path = ["materials", name];
  const from = base(context, "core", library.cores, entry2.from, path);
  if (entry2.from !== void 0 && from === void 0) return void 0;
  const known = from === void 0 ? {} : entryValues(from);
  useOwn(context, "core", name, entry2, from);
  const E = entry2.E ?? known.E;
  const nu = entry2.nu ?? known.nu;
  const isotropic = E === void 0 || nu === void 0 ? void 0 : E / (2 * (1 + nu));
  return placed(
    path,
    () => corePly(
      defined({
        name,
        thickness: entry2.thickness,
        E: needed2(E, "E", path, "the modulus"),
        G: needed2(entry2.G ?? known.G ?? isotropic, "G", path, "the shear modulus, or nu"),
        nu,
        E3: entry2.E3,
        shearStrength: entry2.S ?? known.S,
        density: needed2(entry2.density ?? known.density, "density", path, "the density"),
        expansion: entry2.alpha === void 0 ? void 0 : { alpha1: entry2.alpha, alpha2: entry2.alpha },
        sources: from === void 0 ? [] : entrySources(from)
      })
    ),
    entry2
  );
}

// packages/core/src/design/assemble/fabrics.ts
var grams = (mass) => `${Number((mass * 1e3).toPrecision(4))} g/m^2`;
function layersMass({ layers, arealMass: arealMass3 }, path) {
  if (layers === void 0) return void 0;
  const total3 = layers.reduce((sum5, layer) => sum5 + layer.arealMass, 0);
  if (arealMass3 !== void 0 && Math.abs(arealMass3 - total3) > 5e-3 * total3) {
    fail({
      code: "contradiction",
      message: `arealMass = ${grams(arealMass3)}, but the layers sum to ${grams(total3)}`,
      allowed: "a total that equals the sum of the layers within 0.5 %, or none",
      path: [...path, "arealMass"],
      also: [{ label: "the layers", path: [...path, "layers"] }]
    });
  }
  return total3;
}
function layersOf(context, { layers = [] }, total3, path) {
  const found = layers.map(({ angle: angle2, arealMass: arealMass3, fibre: fibre2, strengths: strengths2 }, i) => {
    const own2 = fibre2 === void 0 ? void 0 : findFibre(context, fibre2, [...path, "layers", i, "fibre"]);
    if (fibre2 !== void 0 && own2 === void 0) return void 0;
    return defined({ angle: angle2, share: arealMass3 / total3, fibre: own2, strengths: strengths2 });
  });
  const known = found.filter((layer) => layer !== void 0);
  return known.length < found.length ? void 0 : known;
}
var yarnTolerance = 0.1;
function ofYarns(name, entry2, path) {
  const { yarnCount, weftCount, yarnLinearDensity, weftLinearDensity, arealMass: arealMass3, warpShare } = entry2;
  const assumed = (text3) => ({ level: "assumption", text: `${name}: ${text3}` });
  if (yarnCount === void 0) return { remarks: [] };
  if (yarnLinearDensity === void 0) {
    const uneven = warpShare === void 0 && weftCount !== void 0 && weftCount !== yarnCount;
    const text3 = "half of its mass is taken to lie in the warp although the counts of warp and weft differ; `warpShare` or the linear densities of the yarns would tell";
    return { remarks: uneven ? [assumed(text3)] : [] };
  }
  const found = clothOfYarns(defined({ yarnCount, weftCount, yarnLinearDensity, weftLinearDensity }));
  const share2 = `${(found.warpShare * 100).toFixed(1)} %`;
  if (arealMass3 === void 0) {
    const text3 = `areal mass ${grams(found.arealMass)} and warp share ${share2} from its yarns, which count as straight`;
    return { ...found, remarks: [assumed(text3)] };
  }
  if (Math.abs(found.arealMass - arealMass3) > yarnTolerance * arealMass3) {
    fail({
      code: "contradiction",
      message: `arealMass = ${grams(arealMass3)}, but counts and linear densities of the yarns give ${grams(found.arealMass)}`,
      allowed: "a mass within 10 % of that of the yarns, or none",
      path: [...path, "arealMass"],
      also: [{ label: "the yarns", path: [...path, "yarnLinearDensity"] }]
    });
  }
  return { warpShare: found.warpShare, remarks: [assumed(`warp share ${share2} from its yarns`)] };
}
var modelOf = ({ transverseModel, shearModel, xi }) => defined({ E2: transverseModel, G12: shearModel ?? transverseModel, xiE2: xi?.E2, xiG12: xi?.G12 });
function resolveFabric(context, name, entry2) {
  const path = ["materials", name];
  const from = base(context, "fabric", library.fabrics, entry2.from, path);
  if (entry2.from !== void 0 && from === void 0) return void 0;
  const architecture = needed2(
    entry2.architecture ?? from?.architecture,
    "architecture",
    path,
    "ud, woven, multiaxial or mat"
  );
  const weave = entry2.weave ?? (entry2.architecture === void 0 ? from?.weave : void 0);
  const faults2 = fabricFaults(entry2, path, { architecture, weave });
  context.problems.push(...faults2);
  const [firstLayer] = entry2.layers ?? [];
  const layered = entry2.layers?.every((layer) => layer.fibre !== void 0) ? firstLayer?.fibre : void 0;
  const fibreName = needed2(entry2.fibre ?? layered ?? from?.fibre, "fibre", path, "the name of a fibre");
  const fibrePath = entry2.fibre !== void 0 ? ["fibre"] : layered !== void 0 ? ["layers", 0, "fibre"] : [];
  const fibre2 = findFibre(context, fibreName, [...path, ...fibrePath]);
  const weftFibre = entry2.weftFibre === void 0 ? void 0 : findFibre(context, entry2.weftFibre, [...path, "weftFibre"]);
  const resin2 = findResin(context, entry2.resin, [...path, "resin"]);
  const total3 = layersMass(entry2, path);
  const layers = total3 === void 0 ? [] : layersOf(context, entry2, total3, path);
  if (fibre2 === void 0 || resin2 === void 0 || layers === void 0 || faults2.length > 0) return void 0;
  if (entry2.weftFibre !== void 0 && weftFibre === void 0) return void 0;
  const yarns = ofYarns(name, entry2, path);
  const withMass = { ...entry2, arealMass: entry2.arealMass ?? yarns.arealMass };
  useOwn(context, "fabric", name, withMass, from);
  const libraryMass = from === void 0 ? void 0 : entryValues(from).arealMass;
  const model = modelOf(entry2) ?? {};
  return defined({
    name,
    fibre: fibre2,
    weftFibre,
    resin: resin2,
    architecture,
    arealMass: needed2(
      total3 ?? entry2.arealMass ?? yarns.arealMass ?? libraryMass,
      "arealMass",
      path,
      "the dry areal mass"
    ),
    fibreVolumeFraction: entry2.fibreVolumeFraction,
    voidFraction: entry2.voidFraction,
    voidModel: entry2.voidModel,
    weave,
    warpShare: entry2.warpShare ?? yarns.warpShare,
    crimpFactor: entry2.crimpFactor,
    yarnCount: entry2.yarnCount,
    weftCount: entry2.weftCount,
    harness: entry2.harness,
    layers: layers.length > 0 ? layers : entry2.architecture === void 0 ? from?.layers : void 0,
    matModel: entry2.matModel,
    model: Object.keys(model).length === 0 ? void 0 : model,
    strengths: entry2.strengths,
    remarks: yarns.remarks.length === 0 ? void 0 : yarns.remarks
  });
}

// packages/core/src/design/assemble/stack.ts
function noMaterial(name, path, within4) {
  return fail({
    code: "missing-key",
    message: `a ply of laminate \`${name}\` names no material`,
    allowed: "a suffix after the angle such as `0twill`, or `material` of the laminate for plies without one",
    path,
    ...within4 === void 0 ? {} : { within: within4 }
  });
}
function fromCode(name, entry2, code) {
  const path = ["laminates", name, "stack"];
  return placed(path, () => parseOrientationCode(code)).map((item) => {
    const within4 = { offset: item.offset, length: item.length };
    const letter = item.material;
    const material2 = letter === void 0 ? entry2.material : entry2.letters?.[letter] ?? letter;
    if (material2 === void 0) return noMaterial(name, path, within4);
    const byLetter = letter !== void 0 && entry2.letters?.[letter] !== void 0;
    const place = byLetter ? { path: ["laminates", name, "letters", letter] } : letter === void 0 ? { path: ["laminates", name, "material"] } : { path, within: within4 };
    return { material: material2, angle: item.angle, mirrored: item.mirrored, ...place };
  });
}
function fromList(name, entry2, list) {
  const half = list.flatMap((item, i) => {
    const path = ["laminates", name, "stack", i];
    const { angle: angle2, material: material2 = entry2.material, count = 1 } = typeof item === "number" ? { angle: item } : item;
    if (material2 === void 0) return noMaterial(name, path);
    if (!Number.isInteger(count))
      fail({ code: "out-of-range", message: `count = ${count} is not a whole number`, path: [...path, "count"] });
    const ownMaterial = typeof item !== "number" && item.material !== void 0;
    const place = ownMaterial ? [...path, "material"] : ["laminates", name, "material"];
    return Array.from({ length: count }, () => ({ material: material2, angle: angle2, mirrored: false, path: place }));
  });
  return entry2.symmetric === true ? [...half, ...half.toReversed().map((item) => ({ ...item, mirrored: true }))] : half;
}
function stackOf2(name, entry2) {
  if (typeof entry2.stack !== "string") return fromList(name, entry2, entry2.stack);
  if (entry2.symmetric !== void 0) {
    fail({
      code: "contradiction",
      message: "`symmetric` is for a listed stack",
      allowed: "an orientation code says it itself, with `s` behind the bracket",
      path: ["laminates", name, "symmetric"],
      atKey: true
    });
  }
  return fromCode(name, entry2, entry2.stack);
}

// packages/core/src/design/assemble/laminates.ts
function resolve(context, name, entry2) {
  if (entry2.kind === "fabric") {
    const fabric2 = resolveFabric(context, name, entry2);
    return fabric2 === void 0 ? void 0 : { fabric: fabric2 };
  }
  if (entry2.kind === "ply") {
    const fixed = resolvePly(context, name, entry2);
    const claim = fixed === void 0 ? void 0 : claimOf(context, name, entry2, fixed);
    return fixed === void 0 ? void 0 : { fixed, ...claim === void 0 ? {} : { claim } };
  }
  if (entry2.kind === "core") {
    const fixed = resolveCore(context, name, entry2);
    return fixed === void 0 ? void 0 : { fixed };
  }
  return fail({
    code: "not-a-choice",
    message: `\`${name}\` is a ${entry2.kind}, not a layer`,
    allowed: "a ply, a fabric or a core"
  });
}
var layerNames = (context) => [
  ...ownNames(context, "ply"),
  ...ownNames(context, "fabric"),
  ...ownNames(context, "core")
];
function missingLayer(context, item) {
  const { material: material2, path, within: within4 } = item;
  const problem = unknownName("ply, fabric or core", material2, layerNames(context), path, within4);
  const inLibrary = ["plies", "fabrics", "cores"].find(
    (kind2) => Object.hasOwn(library[kind2], material2)
  );
  if (/^[sStT]$/.test(material2)) {
    context.problems.push({
      ...problem,
      hint: `to mirror or close the stack, \`${material2}\` stands behind the bracket: "[0/90]${material2}"`
    });
    return;
  }
  context.problems.push(
    inLibrary === void 0 ? problem : {
      ...problem,
      hint: `it is in the library: declare it under \`materials\` with \`from: ${material2}\` and what the library leaves open`
    }
  );
}
function layerOf(context, layers, item) {
  const { material: material2, path, within: within4 } = item;
  const entry2 = own(context.design.materials, material2);
  if (entry2 === void 0) {
    const key = `? ${material2}`;
    if (!layers.has(key)) missingLayer(context, item);
    layers.set(key, void 0);
    return void 0;
  }
  if (!layers.has(material2)) {
    const at4 = entry2.kind === "fibre" || entry2.kind === "resin" ? path : ["materials", material2];
    const before2 = context.problems.length;
    layers.set(
      material2,
      attempt(context, at4, () => resolve(context, material2, entry2))
    );
    if (within4 !== void 0 && at4 === path && context.problems.length > before2) {
      context.problems.push({ ...context.problems.pop(), within: within4 });
    }
  }
  return layers.get(material2);
}
function inBag(fabric2, process2) {
  const fibreVolumeFraction = process2?.fibreVolumeFraction ?? fabric2.fibreVolumeFraction;
  if (fibreVolumeFraction === void 0) {
    return fail({
      code: "missing-key",
      message: `missing \`fibreVolumeFraction\` of fabric \`${fabric2.name}\``,
      allowed: "a fraction from 0.1 to 0.75, of the fabric or of the process of the laminate",
      hint: "vacuum infusion usually reaches 0.48 to 0.56, a bag on wet lay-up 0.42 to 0.52 (common practice, no source)",
      path: ["materials", fabric2.name],
      atKey: true
    });
  }
  return { ...fabric2, fibreVolumeFraction };
}
function processOf(name, entry2, layers) {
  const path = ["laminates", name, "process"];
  const { kind: kind2 = "bag", gap, fibreVolumeFraction } = entry2.process ?? {};
  if (entry2.process === void 0 && layers.every((layer) => "fixed" in layer)) return { kind: "given" };
  if (kind2 === "bag") {
    if (gap !== void 0)
      contradiction(
        [...path, "gap"],
        "`gap` is given for a bag",
        "a bag fixes the fibre fraction, a closed tool the gap"
      );
    return { kind: kind2, ...fibreVolumeFraction === void 0 ? {} : { fibreVolumeFraction } };
  }
  if (fibreVolumeFraction !== void 0) {
    contradiction(
      [...path, "fibreVolumeFraction"],
      "`fibreVolumeFraction` is given for a closed tool",
      "the gap decides it"
    );
  }
  if (gap === void 0)
    return fail({
      code: "missing-key",
      message: `missing \`gap\` in \`${path.join(".")}\``,
      allowed: "the gap of the closed tool",
      path,
      atKey: true
    });
  const fabrics = layers.filter((layer) => "fabric" in layer);
  if (fabrics.length === 0) {
    contradiction(
      path,
      "a closed tool presses fabrics, but every layer has a fixed thickness",
      "at least one fabric, or no process"
    );
  }
  const fibreThickness2 = fabrics.reduce((sum5, { fabric: fabric2 }) => sum5 + fabricFibreThickness(fabric2), 0);
  const fixedThickness = layers.reduce((sum5, layer) => sum5 + ("fixed" in layer ? layer.fixed.thickness : 0), 0);
  return {
    kind: kind2,
    gap,
    fibreVolumeFraction: placed(
      [...path, "gap"],
      () => fibreVolumeFractionInGap({ fibreThickness: fibreThickness2, gap, fixedThickness })
    )
  };
}
var contradiction = (path, message, allowed) => fail({ code: "contradiction", message, allowed, path, atKey: true });
function pliesOf(layer, item, process2, entry2) {
  const { angle: angle2, mirrored } = item;
  if ("fixed" in layer) return [{ ...layer.fixed, angle: angle2 }];
  const fabric2 = process2.kind !== "closedTool" ? inBag(layer.fabric, entry2.process) : { ...layer.fabric, fibreVolumeFraction: process2.fibreVolumeFraction };
  const notes4 = fabricNotes(layer.fabric, fabric2.fibreVolumeFraction);
  const plies2 = placed(["materials", fabric2.name], () => fabricPlies(fabric2, { angle: angle2, mirrored }));
  return notes4.length === 0 ? plies2 : plies2.map((ply3) => ({ ...ply3, notes: [...ply3.notes, ...notes4] }));
}
function unusedFractions(process2, layers) {
  const decided = process2.kind === "given" ? void 0 : process2.fibreVolumeFraction;
  if (decided === void 0) return [];
  const by = process2.kind === "closedTool" ? "the gap of the closed tool" : "the process of the laminate";
  const unused2 = layers.flatMap((layer) => {
    const own2 = "fabric" in layer ? layer.fabric.fibreVolumeFraction : void 0;
    return "fabric" in layer && own2 !== void 0 && own2 !== decided ? [{ name: layer.fabric.name, own: own2 }] : [];
  });
  const texts = unused2.map(
    ({ name, own: own2 }) => `${name}: the fibre fraction ${shownPercent(own2)} of the design file is not used, ${by} makes it ${shownPercent(decided)}`
  );
  return uniqueNotes(texts.map((text3) => ({ level: "assumption", text: text3 })));
}
var shownPercent = (fraction) => `${(fraction * 100).toFixed(1)} %`;
var withNotes = (laminate2, notes4) => notes4.length === 0 ? laminate2 : { ...laminate2, notes: [...laminate2.notes, ...notes4] };
function fibreThickness(plies2) {
  let sum5 = 0;
  for (const ply3 of plies2) {
    if (ply3.core === true) continue;
    if (ply3.fibreVolumeFraction === void 0) return void 0;
    sum5 += ply3.fibreVolumeFraction * ply3.thickness;
  }
  return sum5;
}
var checksOf = ({ freeEdge, panel, blister }) => defined({ freeEdge, panel, blister });
function assembleLaminate(context, layers, name, entry2) {
  const path = ["laminates", name];
  const stack = attempt(context, path, () => stackOf2(name, entry2));
  if (stack === void 0) return void 0;
  const found = stack.map((item) => layerOf(context, layers, item));
  const all = found.filter((layer) => layer !== void 0);
  if (all.length < found.length) return void 0;
  return attempt(context, path, () => {
    const process2 = processOf(name, entry2, all);
    const plies2 = stack.flatMap((item, i) => pliesOf(all[i], item, process2, entry2));
    const solid = fibreThickness(plies2);
    return {
      name,
      entries: stack.map(({ material: material2, angle: angle2, mirrored }) => ({ material: material2, angle: angle2, mirrored })),
      process: process2,
      laminate: withNotes(laminate(plies2), unusedFractions(process2, all)),
      ...entry2.title === void 0 ? {} : { title: entry2.title },
      ...entry2.note === void 0 ? {} : { note: entry2.note },
      ...typeof entry2.stack === "string" ? { code: entry2.stack } : {},
      ...solid === void 0 ? {} : { solidFibreThickness: solid },
      ...checksOf(entry2)
    };
  });
}

// packages/core/src/design/assemble/loads.ts
function assembleLoads(context, laminates) {
  return Object.entries(context.design.loads ?? {}).map(([name, entry2]) => {
    const path = ["loads", name];
    if (!laminates.has(entry2.laminate)) {
      context.problems.push(unknownName("laminate", entry2.laminate, [...laminates.keys()], [...path, "laminate"]));
    }
    checkComponents(context, path, entry2);
    const found = laminates.get(entry2.laminate);
    if (found !== void 0) checkSurroundings(context, path, entry2, found);
    return { name, ...entry2 };
  });
}
function checkComponents(context, path, entry2) {
  const { N, M: M3, strain: strain2, curvature } = entry2;
  attempt(context, [...path, "strain"], () => sixComponents(defined({ N, strain: strain2 })));
  attempt(context, [...path, "curvature"], () => sixComponents(defined({ M: M3, curvature })));
  checkOpen(context, path, ["N", "strain"], N, strain2);
  checkOpen(context, path, ["M", "curvature"], M3, curvature);
  const [first2, second2] = entry2.strength?.envelope ?? [];
  if (first2 === void 0 || first2 !== second2) return;
  context.problems.push({
    code: "contradiction",
    message: `both components of the envelope are ${first2}`,
    allowed: "two different components",
    path: [...path, "strength", "envelope"]
  });
}
function checkOpen(context, path, [force, shape], forces, shapes2) {
  if (shapes2 !== void 0) return;
  forces?.forEach((value, i) => {
    if (value !== null) return;
    context.problems.push({
      code: "contradiction",
      message: `\`${force}\` leaves ${["x", "y", "xy"][i]} open, but no \`${shape}\` is given from which it would follow`,
      allowed: `a value here, 0 where nothing acts, or one in \`${shape}\``,
      path: [...path, force, i]
    });
  });
}
function checkSurroundings(context, path, entry2, model) {
  for (const key of ["temperatureChange", "temperatureGradient", "moisture"]) {
    const value = entry2[key];
    if (value !== void 0) attempt(context, [...path, key], () => freeStrain(model.laminate, { [key]: value }));
  }
}

// packages/core/src/design/assemble/materials.ts
var fractionIn = (process2, fabric2) => (process2.kind === "given" ? void 0 : process2.fibreVolumeFraction) ?? fabric2.fibreVolumeFraction;
function curedStates(name, fabric2, laminates) {
  const states = /* @__PURE__ */ new Map();
  for (const laminate2 of laminates) {
    if (!laminate2.entries.some((entry2) => entry2.material === name)) continue;
    const fibreVolumeFraction = fractionIn(laminate2.process, fabric2);
    if (fibreVolumeFraction === void 0) continue;
    const { laminates: others = [] } = states.get(fibreVolumeFraction) ?? {};
    const cured = { ...fabric2, fibreVolumeFraction };
    states.set(fibreVolumeFraction, { laminates: [...others, laminate2.name], fabric: cured });
  }
  return [...states.values()];
}
function materialModels(layers, laminates) {
  return [...layers].flatMap(([name, layer]) => {
    if (layer === void 0) return [];
    if ("fixed" in layer) return layer.claim === void 0 ? [] : [layer.claim];
    const cured = curedStates(name, layer.fabric, laminates);
    const model = { kind: "fabric", name, cured };
    return cured.length === 0 ? [] : [model];
  });
}

// packages/core/src/design/assemble/bridging.ts
function bridgingOf(entry2, threads, path) {
  const { bridging } = entry2;
  if (bridging === void 0) return { parameters: {} };
  const at4 = [...path, "bridging"];
  checkLean(entry2, bridging, at4);
  checkHold(bridging, at4);
  checkPacking(entry2, bridging, threads, at4);
  checkBends(bridging, at4);
  const { needleFace, underFace, legAngle, measured: measured2 } = bridging;
  return defined({
    parameters: defined({
      frictionStress: bridging.friction,
      sewnEfficiency: bridging.sewnEfficiency,
      anchorEfficiency: bridging.lockEfficiency,
      tenacityFactor: bridging.strengthFactor,
      modulusFactor: bridging.stiffnessFactor,
      packing: bridging.packing,
      beddingIn: bridging.beddingIn,
      siteScatter: bridging.scatter,
      bearingPressure: bridging.bearingPressure,
      bearingWidth: bridging.bearingWidth
    }),
    anchors: needleFace === void 0 && underFace === void 0 ? void 0 : defined({ needleFace, underFace }),
    bends: bridging.bends,
    legAngle,
    measured: measured2 === void 0 ? void 0 : measuredLaw(measured2, [...at4, "measured"]),
    measuredVariation: measured2?.variation
  });
}
function checkLean({ pattern: pattern2 }, { legAngle, measured: measured2 }, path) {
  if (legAngle === void 0) return;
  const at4 = [...path, "legAngle"];
  if (pattern2 !== "zigzag") {
    fail({
      code: "contradiction",
      message: `\`legAngle\` is for the pattern \`zigzag\`, this one is \`${pattern2}\``,
      allowed: "`legAngle` only with `pattern: zigzag`",
      path: at4,
      atKey: true
    });
  }
  if (measured2 !== void 0) {
    fail({
      code: "contradiction",
      message: "`legAngle` is given beside a measured curve, which holds the lean of its own legs",
      allowed: "one of the two",
      path: at4,
      atKey: true,
      also: [{ label: "the measured curve", path: [...path, "measured"] }]
    });
  }
}
function checkBends({ bends, beddingIn }, path) {
  if (bends !== "yielding" || beddingIn === void 0) return;
  fail({
    code: "contradiction",
    message: "`beddingIn` is given for bends that yield, which bed in by their own law",
    allowed: "one of `beddingIn` and `bends: yielding`",
    path: [...path, "beddingIn"],
    atKey: true,
    also: [{ label: "bends that yield", path: [...path, "bends"] }]
  });
}
function checkHold({ friction, needleFace, underFace }, path) {
  if (friction !== 0 || needleFace !== "none" && underFace !== "none") return;
  fail({
    code: "contradiction",
    message: "`friction` is 0 and a face does not hold the thread: such a stitch holds nothing",
    allowed: "friction above 0, or `surface` at both faces",
    path: [...path, "friction"],
    also: [{ label: "the open face", path: [...path, needleFace === "none" ? "needleFace" : "underFace"] }]
  });
}
function checkPacking(entry2, { packing }, { needle, under = needle }, path) {
  const used = hasUnderThread(stitchType(entry2.stitchType)) ? [needle, under] : [needle];
  if (packing === void 0 || used.some((thread) => thread.packing === void 0)) return;
  const names4 = [...new Set(used.map(({ name }) => `\`${name}\``))];
  fail({
    code: "contradiction",
    message: `\`packing\` is given, and ${names4.length === 1 ? `thread ${names4[0]} has its own` : `threads ${names4.join(" and ")} have their own`}`,
    allowed: "the packing once, with the thread or here",
    path: [...path, "packing"],
    atKey: true,
    also: [{ label: "given with the thread", path: ["threads", needle.name, "packing"] }]
  });
}
function measuredLaw({ opening: opening2, force, failure: failure2, cutOff }, path) {
  if (opening2.length !== force.length) {
    fail({
      code: "contradiction",
      message: `a measured curve of ${opening2.length} openings and ${force.length} forces`,
      allowed: "as many forces as openings",
      path: [...path, "force"],
      also: [{ label: "the openings", path: [...path, "opening"] }]
    });
  }
  const points4 = opening2.map((one, i) => ({ opening: one, force: force[i] ?? 0 }));
  try {
    return measuredBridgingLaw(points4, failure2, defined({ cutOff }));
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.map((problem) => ({ ...problem, path: [...path, ...pointPath(problem.message, points4.length)] }))
    );
  }
}
function pointPath(message, count) {
  const [, list = "opening", which] = /^(opening|force) of (?:the )?(?:point )?(\d+|first|last)/.exec(message) ?? [];
  if (which === void 0) return [/without force/.test(message) ? "force" : list];
  return [list, which === "first" ? 0 : which === "last" ? count - 1 : Number(which) - 1];
}

// packages/core/src/design/assemble/stitching.ts
function findThread(context, name, path) {
  const entry2 = own(context.design.threads, name);
  if (entry2 === void 0) {
    if (!Object.hasOwn(library.threads, name)) {
      const known = [...Object.keys(context.design.threads ?? {}), ...Object.keys(library.threads)];
      context.problems.push(unknownName("thread", name, known, path));
      return void 0;
    }
    useLibrary(context, "thread", name, library.threads[name]);
    return threadOf(name, entryValues(library.threads[name]), path);
  }
  const from = entry2.from === void 0 ? void 0 : own(library.threads, entry2.from);
  if (entry2.from !== void 0 && from === void 0) {
    context.problems.push(unknownName("thread", entry2.from, Object.keys(library.threads), ["threads", name, "from"]));
    return void 0;
  }
  useOwn(context, "thread", name, entry2, from);
  const { linearDensity, density, tenacity, modulus, packing } = entry2;
  const given = defined({ linearDensity, density, tenacity, modulus, packing });
  return threadOf(name, { ...from === void 0 ? {} : entryValues(from), ...given }, ["threads", name]);
}
function threadOf(name, values, path) {
  const { linearDensity, density, tenacity, modulus, packing } = values;
  for (const [key, value] of Object.entries({ linearDensity, density })) {
    if (value === void 0) {
      fail({
        code: "missing-key",
        message: `missing \`${key}\` of thread \`${name}\``,
        allowed: `\`${key}\`, here or by \`from\``,
        path,
        atKey: true
      });
    }
  }
  return defined({ name, linearDensity, density, tenacity, modulus, packing });
}
var needed3 = (value, key, what, path) => value ?? fail({
  code: "missing-key",
  message: `missing \`${key}\` in \`${path.join(".")}\``,
  allowed: what,
  path,
  atKey: true
});
var owners3 = [
  ["stagger", "staggered"],
  ["bight", "zigzag"],
  ["crossing", "crossing"],
  ["rows", "edgeRows"],
  ["edge", "edgeRows"]
];
function patternOf(entry2, path) {
  const { pattern: pattern2, pitch } = entry2;
  for (const [key, owner] of owners3) {
    if (entry2[key] !== void 0 && pattern2 !== owner) {
      fail({
        code: "contradiction",
        message: `\`${key}\` is for the pattern \`${owner}\`, this one is \`${pattern2}\``,
        allowed: `\`${key}\` only with \`pattern: ${owner}\``,
        path: [...path, key],
        atKey: true
      });
    }
  }
  if (pattern2 === "edgeRows") return { kind: "rows", rows: edgeRows(entry2, path) };
  const rowSpacing = needed3(entry2.rowSpacing, "rowSpacing", "the distance between rows", path);
  if (pattern2 === "zigzag")
    return { kind: pattern2, pitch, rowSpacing, swing: needed3(entry2.bight, "bight", "the width of the zigzag", path) };
  if (pattern2 === "staggered") return defined({ kind: pattern2, pitch, rowSpacing, shift: entry2.stagger });
  if (pattern2 === "crossing") {
    const { angle: angle2, ...second2 } = needed3(entry2.crossing, "crossing", "the second set of rows", path);
    return { kind: pattern2, pitch, rowSpacing, second: second2, angle: angle2 };
  }
  return { kind: pattern2, pitch, rowSpacing };
}
function edgeRows(entry2, path) {
  for (const key of ["rowSpacing", "field"]) {
    if (entry2[key] === void 0) continue;
    fail({
      code: "contradiction",
      message: `\`${key}\` is given beside the offsets and lengths of the rows`,
      allowed: "the rows alone",
      path: [...path, key],
      atKey: true
    });
  }
  return needed3(entry2.rows, "rows", "a list of rows, each with its offset from the edge", path).map((row, i) => {
    const length2 = row.length ?? edgeRowLength(entry2, row.offset, [...path, "rows", i]);
    return defined({ offset: row.offset, length: length2, pitch: row.pitch ?? entry2.pitch, stagger: row.stagger });
  });
}
function edgeRowLength(entry2, offset, path) {
  const edge = needed3(
    entry2.edge,
    "length",
    "the length of the row, or `edge` of the plan with its length and turning angle",
    path
  );
  return offsetRowLength(edge.length, offset, edge.turn ?? 0);
}
var coreThickness = ({ laminate: laminate2 }) => laminate2.plies.reduce((sum5, ply3) => sum5 + (ply3.core === true ? ply3.thickness : 0), 0);
function dryThickness(entry2, laminate2, path) {
  if (entry2.dryThickness !== void 0) return { thickness: entry2.dryThickness, notes: [] };
  const stack = needed3(laminate2, "laminate", "the laminate that is stitched, or `dryThickness`", path);
  const solid = stack.solidFibreThickness;
  if (entry2.dryFibreVolumeFraction !== void 0 && solid !== void 0)
    return { thickness: solid / entry2.dryFibreVolumeFraction + coreThickness(stack), notes: [] };
  const why = solid === void 0 ? "a ply without fibre volume fraction is in it" : "no dry fibre fraction given";
  const text3 = `thread lengths are for the cured thickness of laminate ${stack.name} (${why}); the dry stack is thicker and takes more thread`;
  return { thickness: stack.laminate.thickness, notes: [{ level: "assumption", text: text3 }] };
}
function fieldOf({ field, pattern: pattern2, rowSpacing = 0 }) {
  return field === void 0 || pattern2 !== "zigzag" ? field : { ...field, y: -rowSpacing / 2 };
}
function assembleStitching(context, laminates, name, entry2) {
  const path = ["stitching", name];
  if (entry2.laminate !== void 0 && !laminates.has(entry2.laminate)) {
    context.problems.push(unknownName("laminate", entry2.laminate, [...laminates.keys()], [...path, "laminate"]));
    return void 0;
  }
  const laminate2 = entry2.laminate === void 0 ? void 0 : laminates.get(entry2.laminate);
  return attempt(
    context,
    path,
    () => {
      const needleThread = findThread(context, entry2.thread, [...path, "thread"]);
      const underThread = entry2.underThread === void 0 ? void 0 : findThread(context, entry2.underThread, [...path, "underThread"]);
      const pattern2 = patternOf(entry2, path);
      if (needleThread === void 0 || entry2.underThread !== void 0 && underThread === void 0)
        return void 0;
      if (entry2.laminate !== void 0 && laminate2 === void 0) return void 0;
      const bridging = bridgingOf(entry2, { needle: needleThread, under: underThread }, path);
      const dry = dryThickness(entry2, laminate2, path);
      const plan = defined({
        type: entry2.stitchType,
        pattern: pattern2,
        needleThread,
        underThread,
        dryThickness: dry.thickness,
        waste: entry2.waste,
        tails: entry2.tails,
        field: fieldOf(entry2),
        strands: entry2.strandsInNeedle,
        needleNumber: entry2.needle,
        holeWidth: entry2.hole,
        sewing: entry2.sewing === void 0 ? void 0 : defined({ rate: entry2.sewing.rate, setup: entry2.sewing.rowSetUp, handling: entry2.sewing.handling })
      });
      const summary = stitchSummary(plan);
      return {
        ...defined({ name, title: entry2.title, note: entry2.note, laminate: entry2.laminate }),
        plan,
        bridging,
        summary: { ...summary, notes: [...dry.notes, ...summary.notes] }
      };
    },
    entry2
  );
}

// packages/core/src/design/assemble/index.ts
function assemble2(design) {
  const context = newContext(design);
  const layers = /* @__PURE__ */ new Map();
  const laminates = /* @__PURE__ */ new Map();
  for (const [name, entry2] of Object.entries(design.laminates))
    laminates.set(name, assembleLaminate(context, layers, name, entry2));
  const stitching = new Map(
    Object.entries(design.stitching ?? {}).map(([name, entry2]) => [
      name,
      assembleStitching(context, laminates, name, entry2)
    ])
  );
  const loads = assembleLoads(context, laminates);
  const coupons = assembleCoupons(context, { laminates, stitching });
  if (context.problems.length > 0) throw new SelvageError(locate(context.problems, parseSource(design.source.text)));
  const { title, units: units2 = "metric", notes: notes4 = [], targets = [] } = design;
  const assembled = [...laminates.values()].filter((one) => one !== void 0);
  return {
    title,
    units: units2,
    notes: typeof notes4 === "string" ? [notes4] : notes4,
    provenance: [...context.used.values()],
    materials: materialModels(layers, assembled),
    laminates: assembled,
    stitching: [...stitching.values()].filter((one) => one !== void 0),
    coupons,
    loads,
    targets,
    source: design.source
  };
}

// packages/core/src/design/inputs.ts
import { isScalar as isScalar2 } from "yaml";

// packages/core/src/design/schema/design.ts
import * as z14 from "zod/mini";

// packages/core/src/design/schema/coupons.ts
import * as z2 from "zod/mini";

// packages/core/src/design/schema/fields.ts
import * as z from "zod/mini";
function limits(kind2, { above, min, max, below }) {
  const shown3 = kind2 === "strain" ? "fraction" : kind2;
  const show = (value) => value === 0 ? "0" : formatQuantity(value, shown3);
  if (min !== void 0 && max !== void 0) return `from ${show(min)} to ${show(max)}`;
  return [
    above === void 0 ? "" : `above ${show(above)}`,
    min === void 0 ? "" : `at least ${show(min)}`,
    max === void 0 ? "" : `at most ${show(max)}`,
    below === void 0 ? "" : `below ${show(below)}`
  ].filter((part) => part !== "").join(" and ");
}
var outside2 = (value, { above, min, max, below }) => above !== void 0 && value <= above || min !== void 0 && value < min || max !== void 0 && value > max || below !== void 0 && value >= below;
var report = (context, input, problem) => {
  context.issues.push({ code: "custom", input, message: problem.message, params: { problem } });
};
function problemOf(issue) {
  return issue.code === "custom" ? issue.params?.problem : void 0;
}
var example = {
  angle: "45",
  arealMass: "300 g/m^2",
  density: "1150 kg/m^3",
  expansion: "22.5e-6 1/K",
  fraction: "0.5 or 50 %",
  length: "4 mm",
  linearDensity: "75 tex",
  modulus: "38.1 GPa",
  perLength: "8 1/cm",
  pressure: "5 kPa",
  strain: "0.3 %",
  stress: "40 MPa",
  temperatureChange: "-60 K",
  tenacity: "1.7 N/tex",
  toughness: "300 J/m^2"
};
var described = (kind2, words3, range) => {
  const limit5 = limits(kind2, range);
  const such = example[kind2] ?? (kinds[kind2].metric === "" ? void 0 : `1 ${kinds[kind2].metric}`);
  return `${words3}: ${kinds[kind2].name}${limit5 === "" ? "" : ` ${limit5}`}${such === void 0 ? "" : `, for example ${such}`}`;
};
function percentHint(given, kind2, value, range) {
  const bare = !String(given).includes("%");
  const meant = bare && kind2 === "fraction" && value > 1 && !outside2(value / 100, range);
  return meant ? { hint: `did you mean \`${given} %\`?` } : {};
}
var solidModulus = { above: 0, max: 5e12 };
var solidExpansion = { min: -1e-3, max: 1e-3 };
var elasticStrain = { min: -0.1, max: 0.1 };
var seenTemperatureChange = { min: -500, max: 1e3 };
var solidDensity = { min: 300, max: 25e3 };
function quantity(kind2, words3, range = {}) {
  const text3 = described(kind2, words3, range);
  const input = z.union([z.string(), z.number()], { error: () => text3 }).check(z.describe(text3));
  return z.pipe(
    input,
    z.transform((given, context) => {
      const parsed2 = parseQuantity(given, kind2);
      if (!parsed2.ok) {
        report(context, given, parsed2.problem);
        return z.NEVER;
      }
      if (outside2(parsed2.value, range)) {
        report(context, given, {
          code: "out-of-range",
          message: `${words3} = ${given} is out of range`,
          allowed: `${kinds[kind2].name} ${limits(kind2, range)}`,
          ...percentHint(given, kind2, parsed2.value, range)
        });
      }
      return parsed2.value;
    })
  );
}
var fibreContent = { min: fibreFractionLimits.lowest, max: fibreFractionLimits.highest };
function section(words3, shape) {
  const keys = Object.keys(shape).join(", ");
  return z.strictObject(shape, { error: (issue) => issue.code === "unrecognized_keys" ? keys : words3 }).check(z.describe(words3));
}
var namePattern = /^[A-Za-z][A-Za-z0-9_-]{0,60}$/;
function named2(words3, value) {
  const key = z.string().check(z.regex(namePattern, { error: () => "a letter, then letters, digits, - or _" }));
  return z.record(key, value, { error: () => words3 }).check(z.describe(words3));
}
var text = (words3) => z.string({ error: () => words3 }).check(z.maxLength(4e3), z.describe(words3));
var listOf = (words3, item, most5) => z.array(item, { error: () => words3 }).check(z.minLength(1), z.maxLength(most5), z.describe(words3));
var reference = (words3) => z.string({ error: () => words3 }).check(z.describe(words3));
function choice2(words3, choices) {
  const input = z.union([z.string(), z.number()], { error: () => `${words3}: ${choices.join(", ")}` });
  return z.pipe(
    input.check(z.meta({ description: `${words3}: ${choices.join(", ")}`, choices: [...choices] })),
    z.transform((given, context) => {
      const found = choices.find((one) => one === String(given));
      if (found !== void 0) return found;
      report(context, given, {
        code: "not-a-choice",
        message: `\`${given}\` is not ${words3}`,
        allowed: choices.join(", "),
        .../^\d+$/.test(String(given)) ? {} : nearestHint(String(given), choices)
      });
      return z.NEVER;
    })
  );
}

// packages/core/src/design/schema/coupons.ts
var couponTypes = ["dcb", "enf", "peel", "wedge"];
var size3 = { above: 0, max: 5 };
var reach2 = { min: 0, max: 5 };
var energy = { above: 0, max: 1e5 };
var optional2 = (meaning, schema) => z2.optional(schema.check(z2.describe(meaning)));
var arm = reference("a laminate of this file");
var arms = "a laminate of this file for both arms, or two: [UPPER, LOWER]";
var couponEntry = section("a coupon", {
  title: z2.optional(text("a name for readers")),
  type: choice2("a type of coupon", couponTypes).check(
    z2.describe(
      "what is done, of dcb, enf, peel, wedge: dcb pulls two arms open, enf bends a notched beam so that its halves slide, peel pulls two arms apart in a T, wedge holds an edge open"
    )
  ),
  arms: z2.union([arm, z2.tuple([arm, arm])], { error: () => arms }).check(
    z2.describe(
      `${arms}, the upper one under the loads and on the side of the needle; their x lies along the crack, the layers run from the tool side of the upper arm down, the crack lies between the arms`
    )
  ),
  stitching: z2.optional(
    reference("the stitch plan of this file whose stitches go through both arms; unstitched when not given")
  ),
  growth: optional2(
    "how the crack meets the rows, across or along: across, when not given, its front is parallel to the rows and meets one after the other; along, it grows in their direction",
    choice2("a direction of growth", ["across", "along"])
  ),
  width: quantity("length", "width", size3),
  length: z2.optional(quantity("length", "dcb and peel: length from the loads to the end of the bond", size3)),
  crackLength: z2.optional(
    quantity(
      "length",
      "crack at the start, from the loads, of enf from the support at the cracked end, of wedge from the edge",
      size3
    )
  ),
  bondToughness: quantity("toughness", "energy that the bond without stitches takes per area of new crack", energy),
  bondToughnessRange: z2.optional(
    z2.tuple(
      [
        quantity("toughness", "lower end of the range", energy),
        quantity("toughness", "upper end of the range", energy)
      ],
      {
        error: () => "two toughnesses: [lower, upper]"
      }
    ).check(
      z2.describe("range of bondToughness, nine in ten: [lower, upper], a toughness each; assumed when not given")
    )
  ),
  firstRow: optional2(
    "distance from the end of the crack, of wedge from the edge, to the first row of the pattern, a length of 0 or more; one distance of rows when not given; not for edgeRows that the crack crosses: their offsets count from the loads, of wedge from the edge",
    quantity("length", "distance to the first row", reach2)
  ),
  stitchedLength: optional2(
    "length of the stitched stretch from the first row on, of edgeRows that the crack crosses from the end of the crack on; to the end of the bond when not given",
    quantity("length", "length of the stitched stretch", size3)
  ),
  span: z2.optional(quantity("length", "enf: distance of the supports", size3)),
  loadSpan: optional2(
    "enf: distance of two loads about the middle, a length; a single load when not given",
    quantity("length", "distance of the loads", size3)
  ),
  overhang: optional2(
    "enf: length of bond beyond the far support; none when not given",
    quantity("length", "overhang", reach2)
  ),
  friction: optional2(
    "enf: coefficient of friction of the crack faces, from 0 to 2; 0 when not given",
    quantity("number", "coefficient of friction", { min: 0, max: 2 })
  ),
  opening: z2.optional(quantity("length", "wedge: opening at which the edge is held", { above: 0, max: 0.5 })),
  depth: z2.optional(quantity("length", "wedge: depth of the bond from the edge", size3)),
  until: z2.optional(
    section("dcb, enf and peel: where the test ends at the latest; every key may be left out", {
      displacement: z2.optional(quantity("length", "displacement at the end", size3)),
      crackLength: z2.optional(quantity("length", "crack at the end", size3))
    })
  ),
  breaking: optional2(
    "what counts as breaking of an arm, anything or fibres: anything that fails in a layer, when not given, or only fibres",
    choice2("a kind of breaking", ["anything", "fibres"])
  ),
  across: optional2(
    "how the arms bend across, held or free: held flat, when not given, as those much wider than thick; free, as narrow strips",
    choice2("a way to bend across", ["held", "free"])
  ),
  test: z2.optional(
    section(
      "dcb, enf and peel: what tests of this coupon gave; narrows the ranges of every coupon with the same stitch, without stitches of every one with the same bondToughness",
      {
        peakForce: quantity("force", "mean of the greatest forces", { above: 0 }),
        variation: optional2(
          "coefficient of variation of that mean, a fraction; 10 % when not given",
          quantity("fraction", "coefficient of variation", { above: 0, max: 1 })
        )
      }
    )
  ),
  note: z2.optional(text("a remark"))
});

// packages/core/src/design/schema/laminates.ts
import * as z5 from "zod/mini";

// packages/core/src/design/schema/laminate-checks.ts
import * as z4 from "zod/mini";

// packages/core/src/design/schema/one-or-list.ts
import * as z3 from "zod/mini";
function oneOrList(words3, one, each2, size4) {
  const given = z3.union([z3.string(), z3.number()], { error: () => words3 });
  const list = z3.array(given, { error: () => words3 }).check(z3.minLength(size4.least), z3.maxLength(size4.most));
  const input = z3.union([z3.string(), z3.number(), list], { error: () => words3 }).check(z3.describe(words3));
  return z3.pipe(
    input,
    z3.transform((value, context) => {
      const read2 = (schema, part, path) => {
        const result = schema.safeParse(part);
        if (result.success) return result.data;
        for (const issue of result.error.issues) {
          context.issues.push({ ...issue, input: part, path: [...path, ...issue.path] });
        }
        return z3.NEVER;
      };
      return Array.isArray(value) ? value.map((part, i) => read2(each2, part, [i])) : read2(one, value, []);
    })
  );
}

// packages/core/src/design/schema/laminate-checks.ts
var side = { above: 0, max: 20 };
var small = { min: -0.1, max: 0.1 };
var toughness2 = z4.optional(
  quantity("toughness", "energy that an interface takes to part, per area of new crack", { above: 0, max: 1e5 })
);
var freeEdgeEntry = section("a free edge along x: where it parts and what drives it", {
  strain: z4.optional(quantity("strain", "strain along the edge, tension positive", small)),
  temperatureChange: z4.optional(
    quantity("temperatureChange", "change from the stress-free temperature", { min: -500, max: 1e3 })
  ),
  toughness: toughness2
});
var acrossAndAlong = "force per width that compresses the panel along x and along y, negative when it pulls";
var panelEntry = section("a rectangular panel of this laminate, simply supported on all four sides", {
  length: quantity("length", "side along x", side),
  width: quantity("length", "side along y", side),
  compression: z4.optional(
    z4.tuple([quantity("forcePerLength", "compression along x"), quantity("forcePerLength", "compression along y")], {
      error: () => `${acrossAndAlong}: a list of two, [Nx, Ny]`
    }).check(z4.describe(`${acrossAndAlong}: [Nx, Ny], a force per length each, for example 20 N/mm`))
  ),
  pressure: z4.optional(quantity("pressure", "pressure on one face", { min: -1e7, max: 1e7 })),
  modes: z4.optional(
    quantity("number", "how many of the lowest natural frequencies; 4 by default", { min: 1, max: 25 })
  )
});
var strain = quantity("strain", "strain", small);
var blisterEntry = section("a delamination of this laminate, whose thinner side may buckle", {
  shape: choice2("a shape of blister", ["strip", "ellipse", "circle"]),
  interface: quantity("number", "number of layers of the built-up laminate below it, from the tool side", {
    min: 1,
    max: 1e5
  }),
  length: quantity("length", "whole length along x; of a circle its diameter", side),
  width: z4.optional(quantity("length", "whole width along y, of an ellipse", side)),
  strain: z4.optional(
    oneOrList(
      "strain of the laminate, tension positive: for a strip one value along x, for example -0.3 %; else a list of three, [x, y, xy]",
      strain,
      strain,
      { least: 3, most: 3 }
    )
  ),
  toughness: toughness2
});

// packages/core/src/design/schema/laminates.ts
var plyEntry = section("one ply of a stack", {
  angle: quantity("angle", "ply angle", { min: -360, max: 360 }),
  material: z5.optional(reference("a ply, fabric or core of this file")),
  count: z5.optional(quantity("number", "how many of them", { min: 1, max: 1e3 }))
});
var angleOnly = quantity("angle", "ply angle", { min: -360, max: 360 });
var listEntry = z5.union([plyEntry, angleOnly], { error: () => "an angle, or { angle, material }" });
var laminateEntry = section("a laminate", {
  title: z5.optional(text("a name for readers")),
  material: z5.optional(reference("the material of plies without a suffix")),
  letters: z5.optional(
    z5.record(z5.string(), reference("a material"), { error: () => "letters for the materials of the orientation code" }).check(
      z5.describe("short suffixes of the orientation code and the materials they stand for, for example t: twill-300")
    )
  ),
  stack: z5.union([z5.string(), z5.array(listEntry).check(z5.minLength(1), z5.maxLength(2e3))], {
    error: () => 'an orientation code in quotes such as "[45/0/90]s", or a list of plies from the tool side'
  }).check(z5.describe('an orientation code in quotes such as "[45/0/90]s", or a list of plies, from the tool side')),
  symmetric: z5.optional(
    z5.boolean({ error: () => "true or false" }).check(z5.describe("true when a listed stack is the tool-side half and is mirrored"))
  ),
  process: z5.optional(
    section("how the laminate is made", {
      kind: choice2("a process", ["bag", "closedTool"]),
      fibreVolumeFraction: z5.optional(quantity("fraction", "fibre volume fraction in the bag", fibreContent)),
      gap: z5.optional(quantity("length", "gap of the closed tool", { above: 0, max: 0.5 }))
    })
  ),
  freeEdge: z5.optional(freeEdgeEntry),
  panel: z5.optional(panelEntry),
  blister: z5.optional(blisterEntry),
  note: z5.optional(text("a remark"))
});

// packages/core/src/design/schema/loads.ts
import * as z7 from "zod/mini";

// packages/core/src/design/schema/strength.ts
import * as z6 from "zod/mini";
var component = choice2("a component of the load", loadComponents);
var optional6 = (meaning, schema) => z6.optional(schema.check(z6.describe(meaning)));
var listed2 = (words3) => words3.join(", ");
var strengthEntry = section("how strength is judged; every key may be left out", {
  criterion: optional6(
    `the criterion by which layers fail one after the other, of ${listed2(failureCriteria)}; hashin when not given, since it tells fibres from matrix and asks for no further values`,
    choice2("a criterion", failureCriteria)
  ),
  discount: optional6(
    "what a failed layer loses: matrix (when not given) E2, G12 and nu12 while its fibres hold; total E1, E2 and G12 whatever fails",
    choice2("a discount", discounts)
  ),
  remainingStiffness: optional6(
    "share of a lost stiffness that a failed layer keeps; 1 % when not given",
    quantity("fraction", "remaining stiffness", { min: 1e-6, below: 1 })
  ),
  collapse: optional6(
    "share of the stiffness against the load below which the laminate has failed; 10 % when not given",
    quantity("fraction", "stiffness at collapse", { above: 0, below: 1 })
  ),
  envelope: optional6(
    `the two components of the failure envelope, of ${listed2(loadComponents)}; those of the load when not given`,
    z6.tuple([component, component], { error: () => "two components of the load, for example [Nx, Nxy]" })
  ),
  envelopeCriteria: optional6(
    "criteria drawn in the envelope, at most four; maxStress, tsaiWu, hashin and puck when not given",
    listOf("a list of one to four criteria", choice2("a criterion", failureCriteria), 4)
  ),
  tsaiHill: optional6(
    `the strengths that Tsai-Hill takes, of ${listed2(tsaiHillVariants)}; sign when not given: by the sign of each stress`,
    choice2("a variant of Tsai-Hill", tsaiHillVariants)
  ),
  F12star: optional6(
    "interaction of Tsai-Wu, F12/\u221A(F11 F22), above -1 and below 1; -0.5 when not given",
    quantity("number", "F12star", { above: -1, below: 1 })
  ),
  transverseShearStrength: optional6(
    "strength in shear across the fibre for Hashin, a stress; half of Yc when not given",
    quantity("stress", "transverse shear strength", { above: 0 })
  ),
  hashinAlpha: optional6(
    "share of shear in the tension of fibres for Hashin, from 0 to 1; 1 when not given",
    quantity("number", "hashinAlpha", { min: 0, max: 1 })
  ),
  puck: optional6(
    "inclinations of Puck: carbon (when not given: 0.35 and 0.30), glass (0.30 and 0.25), or a list of two numbers, for tension and for compression",
    oneOrList(
      "carbon, glass, or a list of two inclinations",
      choice2("a set of inclinations", ["carbon", "glass"]),
      quantity("number", "inclination", { min: 0 }),
      { least: 2, most: 2 }
    )
  )
});

// packages/core/src/design/schema/loads.ts
var three = (kind2, words3, range = {}) => {
  const component2 = z7.nullable(quantity(kind2, words3, range));
  return z7.tuple([component2, component2, component2], {
    error: () => `${words3}: a list of three, [x, y, xy]; null for a component that follows`
  }).check(z7.describe(`${words3}: [x, y, xy], ${kinds[kind2].name} each; null for a component that follows`));
};
var shearForces = z7.tuple([quantity("forcePerLength", "shear force Vx"), quantity("forcePerLength", "shear force Vy")], {
  error: () => "shear forces through the thickness: a list of two, [Vx, Vy]"
}).check(
  z7.describe(
    "shear forces through the thickness, on the faces across x and across y: [Vx, Vy], a force per length each"
  )
);
var moisture = quantity("fraction", "moisture", { min: 0, max: 1 });
var loadEntry = section("a load case on a laminate", {
  laminate: reference("a laminate of this file"),
  N: z7.optional(three("forcePerLength", "force per width")),
  M: z7.optional(three("momentPerLength", "moment per width")),
  strain: z7.optional(three("strain", "mid-plane strain, instead of N", elasticStrain)),
  curvature: z7.optional(three("curvature", "curvature, instead of M")),
  shear: z7.optional(shearForces),
  temperatureChange: z7.optional(
    quantity("temperatureChange", "change from the stress-free temperature", seenTemperatureChange)
  ),
  temperatureGradient: z7.optional(
    quantity("temperatureGradient", "change of temperature per thickness, bag side hotter")
  ),
  moisture: z7.optional(
    oneOrList(
      "moisture taken up, mass of water per mass of ply: a fraction for all plies, or a list with one for each ply of the built-up laminate, from the tool side",
      moisture,
      moisture,
      { least: 1, most: 1e5 }
    )
  ),
  strength: z7.optional(strengthEntry),
  note: z7.optional(text("a remark"))
});
var limit2 = (words3) => z7.union([z7.string(), z7.number()], { error: () => words3 }).check(z7.describe(words3));
var targetEntry = section("a target on a quantity of the design", {
  quantity: reference("path of a number in the JSON report, for example laminates.edge.thickness"),
  atMost: z7.optional(limit2("upper limit with its unit")),
  atLeast: z7.optional(limit2("lower limit with its unit")),
  within: z7.optional(
    z7.tuple([limit2("lower limit with its unit"), limit2("upper limit with its unit")], {
      error: () => "two limits: [lower, upper]"
    }).check(z7.describe("lower and upper limit"))
  ),
  priority: z7.optional(choice2("a priority", ["hard", "soft"])),
  note: z7.optional(text("a remark"))
});

// packages/core/src/design/schema/materials.ts
import * as z9 from "zod/mini";

// packages/core/src/design/schema/fabric-keys.ts
import * as z8 from "zod/mini";
var weaveKeys = {
  yarnCount: z8.optional(
    quantity("perLength", "warp yarns per width of the cloth; its crimp follows", { above: 0, max: 2e4 })
  ),
  weftCount: z8.optional(
    quantity("perLength", "weft yarns per length of the cloth; as many as warp yarns when not given", {
      above: 0,
      max: 2e4
    })
  ),
  harness: z8.optional(
    quantity("number", "yarns in one repeat of the weave; 2 plain, 4 twill, 5 satin when not given", {
      min: 2,
      max: 24
    })
  ),
  yarnLinearDensity: z8.optional(
    quantity("linearDensity", "linear density of a warp yarn; areal mass and warp share then follow from the counts", {
      above: 0,
      max: 0.01
    })
  ),
  weftLinearDensity: z8.optional(
    quantity("linearDensity", "linear density of a weft yarn; that of a warp yarn when not given", {
      above: 0,
      max: 0.01
    })
  ),
  weftFibre: z8.optional(reference("fibre of the weft of a hybrid cloth; that of the warp, `fibre`, when not given"))
};
var elasticModels = ["halpin-tsai", "inverse", "chamis"];
var modelKeys = {
  transverseModel: z8.optional(choice2("a model of the transverse and shear moduli", elasticModels)),
  shearModel: z8.optional(
    choice2("a model of the shear modulus alone; that of transverseModel when not given", elasticModels)
  ),
  xi: z8.optional(
    section("measure of reinforcement of the Halpin-Tsai equation", {
      E2: z8.optional(quantity("number", "for the modulus across the fibre; 2 when not given", { min: 0, max: 1e4 })),
      G12: z8.optional(quantity("number", "for the shear modulus; 1 when not given", { min: 0, max: 1e4 }))
    })
  ),
  voidModel: z8.optional(
    choice2("what voids do: lower the mass only, or also soften the resin as spherical pores", [
      "mass-only",
      "porous-matrix"
    ])
  ),
  matModel: z8.optional(
    choice2("how a mat follows from its fibres: average over all angles, or the 3/8-5/8 approximation", [
      "invariants",
      "tsai-pagano"
    ])
  )
};
var layersOfFabric = (strengths2) => z8.optional(
  listOf(
    "layers of a multiaxial fabric, from its lower face up",
    section("one layer of a multiaxial fabric", {
      angle: quantity("angle", "angle of the layer in the fabric", { min: -180, max: 180 }),
      arealMass: quantity("arealMass", "dry areal mass of the layer", { above: 0 }),
      fibre: z8.optional(reference("fibre of this layer of a hybrid fabric; that of the fabric when not given")),
      strengths: z8.optional(strengths2)
    }),
    12
  )
);
var claimKeys2 = {
  fibre: z8.optional(reference("its fibre, of this file or of the library: E1 is then compared with the constituents")),
  resin: z8.optional(reference("its resin, of this file or of the library")),
  architecture: z8.optional(choice2("how the fibres of the ply lie, for the comparison", ["ud", "woven"])),
  warpShare: z8.optional(
    quantity("fraction", "share of the fibre in the warp of a cloth, for the comparison", { above: 0, below: 1 })
  )
};

// packages/core/src/design/schema/materials.ts
var provenance = {
  label: z9.optional(text("a name for readers")),
  source: z9.optional(text("where the values come from: own test and date, certificate, publication")),
  basis: z9.optional(choice2("a basis", ["published", "measured", "derived", "assumed", "invented"])),
  note: z9.optional(text("a remark"))
};
var strengths = section("strengths of a ply, all positive", {
  Xt: quantity("stress", "tension along 1", { above: 0 }),
  Xc: quantity("stress", "compression along 1", { above: 0 }),
  Yt: quantity("stress", "tension along 2", { above: 0 }),
  Yc: quantity("stress", "compression along 2", { above: 0 }),
  S: quantity("stress", "in-plane shear", { above: 0 })
});
var expansion = section("thermal expansion of a ply", {
  alpha1: quantity("expansion", "along 1", solidExpansion),
  alpha2: quantity("expansion", "along 2", solidExpansion)
});
var moistureExpansion2 = section("swelling of a ply per mass fraction of moisture", {
  beta1: quantity("number", "along 1", { min: 0 }),
  beta2: quantity("number", "along 2", { min: 0 })
});
var fibre = section("a reinforcing fibre", {
  kind: z9.literal("fibre"),
  E1: quantity("modulus", "modulus along the fibre", solidModulus),
  E2: quantity("modulus", "modulus across the fibre", solidModulus),
  G12: quantity("modulus", "shear modulus", solidModulus),
  nu12: quantity("number", "Poisson ratio", { min: -1, max: 1 }),
  nu23: z9.optional(quantity("number", "transverse Poisson ratio", { min: -1, max: 1 })),
  density: quantity("density", "density", solidDensity),
  alpha1: z9.optional(quantity("expansion", "expansion along the fibre", solidExpansion)),
  alpha2: z9.optional(quantity("expansion", "expansion across the fibre", solidExpansion)),
  ...provenance
});
var resin = section("a cured resin", {
  kind: z9.literal("resin"),
  E: quantity("modulus", "modulus", solidModulus),
  nu: quantity("number", "Poisson ratio", { min: 0, below: 0.5 }),
  density: quantity("density", "density", solidDensity),
  alpha: z9.optional(quantity("expansion", "expansion", solidExpansion)),
  beta: z9.optional(quantity("number", "swelling per mass fraction of moisture", { min: 0 })),
  ...provenance
});
var plyMaterial = section("a ply given by its own constants", {
  kind: z9.literal("ply"),
  from: z9.optional(reference("a ply of the library that fills in what is not given here")),
  E1: z9.optional(quantity("modulus", "modulus along 1", solidModulus)),
  E2: z9.optional(quantity("modulus", "modulus along 2", solidModulus)),
  G12: z9.optional(quantity("modulus", "in-plane shear modulus", solidModulus)),
  nu12: z9.optional(quantity("number", "major Poisson ratio")),
  G13: z9.optional(quantity("modulus", "shear modulus through the thickness, along 1; by default G12", solidModulus)),
  G23: z9.optional(quantity("modulus", "shear modulus through the thickness, along 2; else assumed", solidModulus)),
  nu23: z9.optional(quantity("number", "Poisson ratio across the fibre, for a G23 that is not given")),
  thickness: quantity("length", "cured thickness", { above: 0, max: 0.1 }),
  density: z9.optional(quantity("density", "density", solidDensity)),
  fibreVolumeFraction: z9.optional(quantity("fraction", "fibre volume fraction", { above: 0, below: 1 })),
  ...claimKeys2,
  strengths: z9.optional(strengths),
  expansion: z9.optional(expansion),
  moistureExpansion: z9.optional(moistureExpansion2),
  ...provenance
});
var architectures = ["ud", "woven", "multiaxial", "mat"];
var weaves = ["plain", "twill", "satin"];
var fabric = section("a dry fabric that becomes plies with resin", {
  kind: z9.literal("fabric"),
  from: z9.optional(reference("a fabric of the library that fills in what is not given here")),
  fibre: z9.optional(reference("a fibre of this file or of the library")),
  resin: reference("a resin of this file or of the library"),
  arealMass: z9.optional(quantity("arealMass", "dry areal mass", { above: 0, max: 20 })),
  architecture: z9.optional(choice2("an architecture", architectures)),
  weave: z9.optional(choice2("a weave", weaves)),
  warpShare: z9.optional(quantity("fraction", "share of the areal mass in the warp", { above: 0, below: 1 })),
  crimpFactor: z9.optional(quantity("number", "factor on the moduli of a cloth for its crimp", { above: 0.5, max: 1 })),
  ...weaveKeys,
  layers: layersOfFabric(strengths),
  fibreVolumeFraction: z9.optional(quantity("fraction", "fibre volume fraction", fibreContent)),
  voidFraction: z9.optional(quantity("fraction", "void fraction", { min: 0, max: 0.2 })),
  ...modelKeys,
  strengths: z9.optional(strengths),
  ...provenance
});
var core = section("a core", {
  kind: z9.literal("core"),
  from: z9.optional(reference("a core of the library that fills in what is not given here")),
  thickness: quantity("length", "thickness", { above: 0, max: 0.5 }),
  E: z9.optional(quantity("modulus", "modulus", solidModulus)),
  G: z9.optional(quantity("modulus", "shear modulus", solidModulus)),
  E3: z9.optional(quantity("modulus", "modulus through the thickness, for face wrinkling; by default E", solidModulus)),
  S: z9.optional(quantity("stress", "shear strength through the thickness", { above: 0 })),
  nu: z9.optional(quantity("number", "Poisson ratio", { min: 0, below: 0.5 })),
  density: z9.optional(quantity("density", "density", { min: 10, max: 25e3 })),
  alpha: z9.optional(quantity("expansion", "thermal expansion in the plane", solidExpansion)),
  ...provenance
});
var materialKinds = ["fibre", "resin", "ply", "fabric", "core"];
var material = z9.discriminatedUnion("kind", [fibre, resin, plyMaterial, fabric, core], {
  error: () => materialKinds.join(", ")
});
var threadEntry = section("a sewing thread", {
  from: z9.optional(reference("a thread of the library that fills in what is not given here")),
  linearDensity: z9.optional(quantity("linearDensity", "linear density", { above: 0, max: 0.01 })),
  density: z9.optional(quantity("density", "density of the fibre", solidDensity)),
  tenacity: z9.optional(quantity("tenacity", "tenacity", { above: 0 })),
  modulus: z9.optional(quantity("threadModulus", "modulus", { above: 0 })),
  packing: z9.optional(quantity("fraction", "packing of the fibres in the cured thread", { min: 0.3, max: 0.91 })),
  ...provenance
});

// packages/core/src/design/schema/search.ts
import * as z10 from "zod/mini";
var angle = quantity("angle", "ply angle", { min: -360, max: 360 });
var plyChoice = section("a ply of the stack", {
  angle,
  material: z10.optional(reference("a ply, fabric or core of this file"))
});
var yesOrNo = (words3) => z10.boolean({ error: () => "true or false" }).check(z10.describe(words3));
var whole = (words3, min, max) => quantity("number", words3, { min, max });
var plies = "plies of the stack, of its half when symmetric: a whole number, or a list of them";
var plyCount = quantity("number", plies, { min: 1, max: 200 });
var stackEntry = section("the stack of a laminate, to be found", {
  laminate: reference("a laminate of this file, whose stack is written as an orientation code"),
  choices: z10.optional(
    z10.array(z10.union([plyChoice, angle], { error: () => "an angle, or { angle, material }" }), {
      error: () => "a list of plies to choose from"
    }).check(
      z10.minLength(1),
      z10.maxLength(100),
      z10.describe("what each ply can be: angles, or { angle, material }; or give `angles`")
    )
  ),
  materials: z10.optional(
    listOf(
      "materials to choose from, each at each of the `angles`",
      reference("a ply, fabric or core of this file"),
      20
    )
  ),
  angles: z10.optional(listOf("angles to choose from", angle, 72)),
  plies: oneOrList(plies, plyCount, plyCount, { least: 1, most: 50 }),
  symmetric: z10.optional(yesOrNo("true when the plies are the tool-side half, which is mirrored")),
  balanced: z10.optional(
    yesOrNo("true when every ply that couples stretching with shearing needs one of the opposite angle")
  ),
  grouping: z10.optional(whole("most plies alike next to each other, across the mid-plane too", 1, 400)),
  outer: z10.optional(plyChoice.check(z10.describe("the first ply, at the tool side"))),
  angleJump: z10.optional(
    quantity("angle", "largest step between the angles of neighbours, as lines", { min: 0, max: 90 })
  )
});
var limit3 = (words3) => z10.union([z10.string(), z10.number()], { error: () => words3 }).check(z10.describe(words3));
var constraintEntry = section("a limit that candidates keep to", {
  quantity: reference("path of a number in the JSON report"),
  atLeast: z10.optional(limit3("lower limit with its unit")),
  atMost: z10.optional(limit3("upper limit with its unit"))
});
var aims = (words3) => z10.optional(listOf(words3, reference("path of a number in the JSON report, for example laminates.edge.arealMass"), 10));
var inputValue = z10.union([z10.string(), z10.number(), z10.boolean()], {
  error: () => "a value as it would be written at that place"
});
var searchEntry = section("a search for the best candidates", {
  vary: z10.optional(
    z10.record(z10.string(), listOf("the values that an input takes", inputValue, 1e3), {
      error: () => "inputs by their dotted paths, each with a list of values"
    }).check(
      z10.describe("inputs by their dotted paths, for example stitching.edge.pitch, each with its list of values")
    )
  ),
  stack: z10.optional(stackEntry),
  minimise: aims("quantities to be made small"),
  maximise: aims("quantities to be made large"),
  constraints: z10.optional(listOf("limits that candidates keep to", constraintEntry, 100)),
  targets: z10.optional(
    yesOrNo("false when the hard targets of the design are not limits of the search; true when not given")
  ),
  method: z10.optional(
    choice2("a method", ["exhaustive", "nsga2"]).check(
      z10.describe(
        "exhaustive goes through all candidates, nsga2 breeds good ones; by default exhaustive for up to 10 000 000 laminates or, where whole designs are computed, 20 000 designs"
      )
    )
  ),
  population: z10.optional(whole("members of a generation of nsga2; 100 when not given", 4, 1e4)),
  generations: z10.optional(whole("generations of nsga2; 100 when not given", 1, 1e5)),
  seed: z10.optional(whole("seed of the random numbers of nsga2; 1 when not given", 0, 2 ** 32 - 1)),
  keep: z10.optional(whole("candidates shown; 20 when not given", 1, 1e3))
});

// packages/core/src/design/schema/stitching.ts
import * as z12 from "zod/mini";

// packages/core/src/design/schema/bridging.ts
import * as z11 from "zod/mini";
var optional12 = (meaning, schema) => z11.optional(schema.check(z11.describe(meaning)));
function usual(name, kind2) {
  const { value, low, high } = bridgingPriors[name];
  const show = (number7) => kind2 === "number" ? formatNumber(number7) : formatQuantity(number7, kind2);
  return `${show(value)} when not given, ${show(low)} to ${show(high)} usual`;
}
var ends = ["surface", "none"];
var failures = ["threadAtCrack", "threadAtAnchor", "threadPullOut"];
var end = (face) => optional12(
  `what holds the thread at the ${face} face, surface or none: surface, when not given, a bend over the face or a lock pulled to it; none for a tuft, a pin, or a face that is worn or sanded off`,
  choice2("an end of the thread", ends)
);
var measured = section("a curve measured on one stitch, in place of the computed one", {
  opening: listOf(
    "openings of the crack at the points of the curve, lengths from 0 on that never fall, at least two; the same opening twice is a drop",
    quantity("length", "opening", { min: 0, max: 0.1 }),
    2e3
  ),
  force: listOf(
    "forces of one stitch at these openings, as many",
    quantity("force", "force of one stitch", { min: 0, max: 1e5 }),
    2e3
  ),
  failure: choice2("what gave way", failures).check(
    z11.describe(
      "what gave way, of threadAtCrack, threadAtAnchor, threadPullOut: the thread in the plane of the crack, at its lock or bend over a face, or its hold on the laminate"
    )
  ),
  variation: optional12(
    `coefficient of variation between the stitches that were measured, a fraction: ${formatQuantity(usualVariation, "fraction", { digits: 2 })} when not given`,
    quantity("fraction", "variation between stitches", { min: 0, max: 1 })
  ),
  cutOff: optional12(
    "true when the test ended while the stitch still held; without it the curve has to end at or near zero force",
    z11.boolean({ error: () => "true or false" })
  )
});
var bridgingEntry = section("how one stitch holds a crack; every key may be left out", {
  friction: optional12(
    `friction between the soaked thread and the laminate while it slips, a stress: ${usual("frictionStress", "stress")}`,
    quantity("stress", "friction", { min: 0, max: 5e8 })
  ),
  sewnEfficiency: optional12(
    `share of the straight thread's strength left after sewing, in the plane of the crack, a fraction: ${usual("sewnEfficiency", "fraction")}`,
    quantity("fraction", "strength left after sewing", { above: 0, max: 1 })
  ),
  lockEfficiency: optional12(
    `share of the straight thread's strength left at a lock or a bend over a face, a fraction: ${usual("anchorEfficiency", "fraction")}; glass and carbon need their own, far lower`,
    quantity("fraction", "strength left at a lock or bend", { above: 0, max: 1 })
  ),
  strengthFactor: optional12(
    `strength of the thread in hand over its tenacity: ${usual("tenacityFactor", "number")}`,
    quantity("number", "strength over tenacity", { min: 0.1, max: 3 })
  ),
  stiffnessFactor: optional12(
    `stiffness of the thread in the laminate over its modulus: ${usual("modulusFactor", "number")}`,
    quantity("number", "stiffness over modulus", { min: 0.1, max: 3 })
  ),
  packing: optional12(
    `share of fibre inside the outline of one cured leg, for threads without a packing of their own, a fraction: ${usual("packing", "fraction")}`,
    quantity("fraction", "packing", { min: 0.3, max: 0.9 })
  ),
  beddingIn: optional12(
    `how far a bend over a face sinks into it by the time it breaks, in diameters of one leg: ${usual("beddingIn", "number")}`,
    quantity("number", "bedding-in", { min: 0, max: 10 })
  ),
  bends: optional12(
    "how the bends over the faces give way, rigid or yielding: rigid, when not given, by no more than beddingIn; yielding, as the bed under them yields and the thread on the face follows, which opens the stitch further and has not been measured",
    choice2("a way of the bends", ["rigid", "yielding"])
  ),
  scatter: optional12(
    `coefficient of variation of the strength of one place from stitch to stitch, a fraction: ${usual("siteScatter", "fraction")}`,
    quantity("fraction", "scatter", { min: 0, max: 0.5 })
  ),
  bearingPressure: optional12(
    `pressure at which a thread ploughs sideways into the laminate, a stress: ${usual("bearingPressure", "stress")}`,
    quantity("stress", "bearing pressure", { above: 0, max: 5e9 })
  ),
  bearingWidth: optional12(
    `width of the thread that bears on the laminate, over the diameter of the round bundle of its legs: ${usual("bearingWidth", "number")}`,
    quantity("number", "bearing width", { min: 0.1, max: 5 })
  ),
  legAngle: optional12(
    "zigzag: lean of the legs from straight through the laminate, an angle from 0 to 60 degrees; 0 when not given",
    quantity("angle", "lean of the legs", { min: 0, max: 60 })
  ),
  needleFace: end("needle"),
  underFace: end("under"),
  measured: z11.optional(measured)
});

// packages/core/src/design/schema/stitching.ts
var patterns = ["parallel", "staggered", "zigzag", "crossing", "edgeRows"];
var edgeRow = section("one row along the edge", {
  offset: quantity("length", "distance from the edge", { min: 0 }),
  length: z12.optional(
    quantity("longLength", "length of the row; by default from the edge and its turning angle", { above: 0 })
  ),
  pitch: z12.optional(quantity("length", "pitch of this row", { above: 0 })),
  stagger: z12.optional(quantity("length", "shift of the first hole along the row", { min: 0 }))
});
var stitchingEntry = section("a stitch plan", {
  title: z12.optional(text("a name for readers")),
  laminate: z12.optional(reference("the laminate that is stitched")),
  thread: reference("the needle thread: a thread of this file or of the library"),
  underThread: z12.optional(reference("the bobbin or looper thread; by default the needle thread")),
  stitchType: choice2("a stitch type", stitchTypeIds),
  strandsInNeedle: z12.optional(
    quantity("number", "strands of thread in the needle together; 1 by default, a doubled hand thread has 2", {
      min: 1,
      max: 8
    })
  ),
  pattern: choice2("a pattern", patterns),
  pitch: quantity("length", "distance between holes along a row", { above: 0, max: 1 }),
  rowSpacing: z12.optional(quantity("length", "distance between rows", { above: 0, max: 1 })),
  stagger: z12.optional(quantity("fraction", "shift of every other row, as a fraction of the pitch", { min: 0, max: 1 })),
  bight: z12.optional(quantity("length", "width of the zigzag", { above: 0, max: 1 })),
  crossing: z12.optional(
    section("the second set of rows of a crossing pattern", {
      pitch: quantity("length", "pitch of the second set", { above: 0, max: 1 }),
      rowSpacing: quantity("length", "row spacing of the second set", { above: 0, max: 1 }),
      angle: quantity("angle", "angle between the two sets", { above: 0, max: 90 })
    })
  ),
  field: z12.optional(
    section("the stitched rectangle, for totals of a pattern that fills it", {
      length: quantity("longLength", "length along the rows", { above: 0 }),
      width: quantity("longLength", "width across the rows", { above: 0 })
    })
  ),
  edge: z12.optional(
    section("the edge that the rows follow", {
      length: quantity("longLength", "length of the stitched edge", { above: 0 }),
      turn: z12.optional(quantity("angle", "angle through which the convex edge turns", { min: 0, max: 360 }))
    })
  ),
  rows: z12.optional(listOf("rows along the edge, nearest to the edge first", edgeRow, 50)),
  dryFibreVolumeFraction: z12.optional(
    quantity("fraction", "fibre volume fraction of the dry stack under the presser foot", { min: 0.2, max: 0.7 })
  ),
  dryThickness: z12.optional(
    quantity("length", "thickness of the dry stack, when it was measured", { above: 0, max: 0.2 })
  ),
  needle: z12.optional(
    quantity("number", "needle number metric: blade diameter in hundredths of a millimetre", { min: 40, max: 400 })
  ),
  hole: z12.optional(quantity("length", "width of the hole or resin pocket around the thread", { above: 0, max: 0.02 })),
  tails: z12.optional(quantity("length", "thread left hanging at each end of a row", { min: 0, max: 2 })),
  waste: z12.optional(quantity("fraction", "thread waste", { min: 0, max: 1 })),
  sewing: z12.optional(
    section("how fast it is sewn", {
      rate: quantity("rate", "stitches per time", { above: 0 }),
      rowSetUp: z12.optional(quantity("time", "set-up of each row", { min: 0 })),
      handling: z12.optional(quantity("time", "handling of the piece", { min: 0 }))
    })
  ),
  bridging: z12.optional(bridgingEntry),
  note: z12.optional(text("a remark"))
});

// packages/core/src/design/schema/tolerances.ts
import * as z13 from "zod/mini";
var share = { above: 0, max: 1 };
var amount = (words3) => z13.union([z13.string(), z13.number()], { error: () => `${words3}: a number with its unit` }).check(z13.describe(`${words3}: a number with its unit, as the input has one`));
var toleranceEntry = section("how well one input is known", {
  input: reference("dotted path of a number of this file, for example materials.cloth.fibreVolumeFraction"),
  relative: z13.optional(quantity("fraction", "half the range as a share of the value", share)),
  plusMinus: z13.optional(amount("half the range")),
  between: z13.optional(
    z13.tuple([amount("low end"), amount("high end")], { error: () => "two ends, for example [48 %, 53 %]" }).check(z13.describe("both ends of the range"))
  ),
  distribution: z13.optional(
    choice2("a distribution", ["normal", "lognormal", "uniform", "triangular"]).check(
      z13.describe(
        "normal by default; the ends are two standard deviations from the middle (lognormal: of the logarithm) for normal and lognormal, the limits for uniform and triangular"
      )
    )
  ),
  note: z13.optional(text("a remark"))
});

// packages/core/src/design/schema/design.ts
var designSchema = section("a design", {
  format: z14.literal(1, { error: () => "1, the only format there is" }).check(z14.describe("version of the file format: 1")),
  title: text("title of the design"),
  units: z14.optional(choice2("units of the report", ["metric", "us"])),
  notes: z14.optional(
    z14.union([z14.string(), z14.array(z14.string())], { error: () => "text or a list of texts" }).check(z14.describe("remarks, printed in the report"))
  ),
  materials: z14.optional(named2("materials by name", material)),
  threads: z14.optional(named2("threads by name", threadEntry)),
  laminates: named2("laminates by name", laminateEntry),
  stitching: z14.optional(named2("stitch plans by name", stitchingEntry)),
  loads: z14.optional(named2("load cases by name", loadEntry)),
  coupons: z14.optional(named2("coupons by name", couponEntry)),
  targets: z14.optional(listOf("a list of targets", targetEntry, 500)),
  tolerances: z14.optional(listOf("how well inputs are known, for the study of uncertainty", toleranceEntry, 200)),
  search: z14.optional(searchEntry)
});

// packages/core/src/design/translate.ts
function inWords(path) {
  if (path.length === 0) return "the design";
  const last = path[path.length - 1];
  return typeof last === "number" ? `entry ${last + 1} of ${path.slice(0, -1).join(".")}` : `\`${path.join(".")}\``;
}
function valueAt2(data, path) {
  let value = data;
  for (const part of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, part)) return void 0;
    value = value[part];
  }
  return value;
}
var kindOf2 = (value) => {
  if (value === null) return "nothing";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a mapping";
  return typeof value === "string" ? `the text \`${value.length > 40 ? `${value.slice(0, 40)}\u2026` : value}\`` : `${typeof value} \`${String(value)}\``;
};
function missing2(path, allowed) {
  const key = String(path[path.length - 1]);
  const parent = path.slice(0, -1);
  return {
    code: "missing-key",
    message: `missing \`${key}\` in ${inWords(parent)}`,
    allowed,
    path: parent,
    atKey: true
  };
}
function translate(issue, data) {
  const path = issue.path.map((part) => typeof part === "symbol" ? String(part) : part);
  const own2 = problemOf(issue);
  if (own2 !== void 0) return [{ ...own2, path }];
  if (issue.code === "unrecognized_keys") {
    return (issue.keys ?? []).map((key) => ({
      code: "unknown-key",
      message: `unknown key \`${key}\` in ${inWords(path)}`,
      allowed: issue.message,
      ...nearestHint(key, issue.message.split(", ")),
      path: [...path, key],
      atKey: true
    }));
  }
  const value = valueAt2(data, path);
  if (issue.code === "invalid_union" && issue.discriminator !== void 0) return [discriminator(issue, path, value)];
  if (value === void 0) return [missing2(path, issue.message)];
  if (issue.code === "invalid_key") {
    return [
      {
        code: "wrong-type",
        message: `\`${String(path[path.length - 1])}\` cannot be a name`,
        allowed: "a letter, then letters, digits, - or _ (at most 61)",
        path,
        atKey: true
      }
    ];
  }
  const fixed = Array.isArray(value) && issue.origin === "array" && !issue.message.startsWith("Too ");
  if (fixed && (issue.code === "too_small" || issue.code === "too_big")) {
    return [
      {
        code: "out-of-range",
        message: `${inWords(path)} has ${value.length} ${value.length === 1 ? "entry" : "entries"}`,
        allowed: issue.message,
        path
      }
    ];
  }
  if (issue.code === "too_small" || issue.code === "too_big") {
    const bound = issue.code === "too_small" ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
    return [
      {
        code: "out-of-range",
        message: `${inWords(path)} has the wrong size`,
        allowed: Array.isArray(value) ? `${bound} entries` : `${bound} characters`,
        path
      }
    ];
  }
  return [{ code: "wrong-type", message: `${inWords(path)} is ${kindOf2(value)}`, allowed: issue.message, path }];
}
function discriminator(issue, path, value) {
  const key = issue.discriminator ?? "kind";
  const parent = path[path.length - 1] === key ? path.slice(0, -1) : path;
  const holder = parent === path ? value : void 0;
  const given = parent === path && typeof holder === "object" && holder !== null ? holder[key] : value;
  if (parent === path && (typeof holder !== "object" || holder === null)) {
    return {
      code: "wrong-type",
      message: `${inWords(path)} is ${kindOf2(value)}`,
      allowed: `a mapping with \`${key}\``,
      path
    };
  }
  if (given === void 0) return { ...missing2([...parent, key], issue.message) };
  return {
    code: "not-a-choice",
    message: `${key} \`${String(given)}\` of ${inWords(parent)} is not known`,
    allowed: issue.message,
    ...nearestHint(String(given), issue.message.split(", ")),
    path: [...parent, key]
  };
}
function mergeMisspelled(problems) {
  const hintedKeys = new Set(
    problems.filter((problem) => problem.code === "unknown-key" && problem.hint !== void 0).map(
      (problem) => `${(problem.path ?? []).slice(0, -1).join("\0")}\0${/`([^`]*)`/.exec(problem.hint ?? "")?.[1] ?? ""}`
    )
  );
  return problems.filter((problem) => {
    if (problem.code !== "missing-key") return true;
    const key = /`([^`]*)`/.exec(problem.message)?.[1] ?? "";
    return !hintedKeys.has(`${(problem.path ?? []).join("\0")}\0${key}`);
  });
}

// packages/core/src/design/read.ts
var largestFile = 2 ** 20;
var mostAliases = 100;
function parseDesign(text3) {
  if (text3.length > largestFile) {
    fail({ code: "too-large", message: `the file has ${text3.length} characters`, allowed: `at most ${largestFile}` });
  }
  const source = parseSource(text3);
  const syntax = syntaxProblems(source);
  if (syntax.length > 0) throw new SelvageError(syntax);
  try {
    return { source, data: source.document.toJS({ maxAliasCount: mostAliases }) };
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    const first2 = text3.indexOf("&");
    return fail({
      code: "too-many-aliases",
      message: `aliases unfold to more than ${mostAliases} copies`,
      allowed: "fewer aliases, or none",
      where: placeAt(source, Math.max(first2, 0), Math.max(first2, 0) + 1)
    });
  }
}
function checkDesign(data, source, options = {}) {
  if (data === null || data === void 0) {
    fail({ code: "missing-key", message: "the file is empty", allowed: "a design: format, title, laminates" });
  }
  const result = designSchema.safeParse(data);
  if (!result.success) {
    const problems = result.error.issues.flatMap((issue) => translate(issue, data));
    throw new SelvageError(locate(mergeMisspelled(problems), source));
  }
  if (Object.keys(result.data.laminates).length === 0) {
    const problem = {
      code: "missing-key",
      message: "`laminates` is empty",
      allowed: "at least one laminate",
      path: ["laminates"],
      atKey: true
    };
    throw new SelvageError(locate([problem], source));
  }
  return {
    ...result.data,
    source: { text: source.text, ...options.fileName === void 0 ? {} : { fileName: options.fileName } }
  };
}
function designText(bytes) {
  if (bytes.length > largestFile) {
    fail({ code: "too-large", message: `the file has ${bytes.length} bytes`, allowed: `at most ${largestFile}` });
  }
  return decode(bytes);
}
function decode(bytes) {
  if (bytes[0] === 255 && bytes[1] === 254 || bytes[0] === 254 && bytes[1] === 255) {
    fail({ code: "not-text", message: "the file is UTF-16", allowed: "UTF-8", hint: "save it as UTF-8" });
  }
  try {
    const text3 = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    const zero2 = text3.indexOf("\0");
    if (zero2 < 0) return text3;
    return fail(notText(text3.slice(0, zero2), "a zero byte", text3));
  } catch (error) {
    if (error instanceof SelvageError) throw error;
    const loose = new TextDecoder("utf-8").decode(bytes);
    const bad = loose.indexOf("\uFFFD");
    return fail(notText(loose.slice(0, bad), "bytes that are not UTF-8", loose));
  }
}
function notText(before2, what, whole2) {
  const lines = before2.split("\n");
  const last = lines[lines.length - 1] ?? "";
  const excerpt = (whole2.split("\n")[lines.length - 1] ?? "").replace(/\r$/, "");
  return {
    code: "not-text",
    message: `the file holds ${what}`,
    allowed: "UTF-8 text",
    hint: "save it as UTF-8",
    where: { line: lines.length, column: last.length + 1, length: 1, excerpt }
  };
}

// packages/core/src/design/inputs.ts
function designInputs(file, options = {}) {
  const text3 = typeof file === "string" ? file : designText(file);
  const { source, data } = parseDesign(text3.replace(/^\uFEFF/, ""));
  return { text: source.text, source, data, design: checkDesign(data, source, options), options };
}
var isHolder = (value) => typeof value === "object" && value !== null;
function keysOf({ data }, path, mayAdd = false) {
  const keys = [];
  let value = data;
  const parts2 = path.split(".");
  for (const [i, part] of parts2.entries()) {
    if (!isHolder(value)) return fail(noInput(path, keys, part, value));
    const added2 = mayAdd && i > 0 && i === parts2.length - 1 && !Array.isArray(value);
    if (!Object.hasOwn(value, part) && !added2) fail(noInput(path, keys, part, value));
    keys.push(Array.isArray(value) ? Number(part) : part);
    value = value[part];
  }
  if (isHolder(value)) {
    fail({
      code: "unknown-name",
      message: `\`${path}\` is not one value of the design file`,
      allowed: `one of the values in it: ${named3(Object.keys(value))}`,
      path: keys
    });
  }
  return keys;
}
var named3 = (names4) => names4.slice(0, 20).join(", ");
function noInput(path, keys, part, value) {
  const names4 = isHolder(value) ? Object.keys(value) : [];
  return {
    code: "unknown-name",
    message: `the design file has no \`${path}\``,
    allowed: names4.length === 0 ? `\`${keys.join(".")}\` has nothing below it` : `${keys.length === 0 ? "a path begins with" : `after \`${keys.join(".")}\``}: ${named3(names4)}`,
    ...nearestHint(part, names4),
    ...keys.length === 0 ? {} : { path: keys }
  };
}
function replaced(data, [key, ...rest], value) {
  if (key === void 0) return value;
  const copy2 = Array.isArray(data) ? [...data] : { ...data };
  copy2[key] = replaced(data[key], rest, value);
  return copy2;
}
function variant(inputs, changes) {
  const data = changes.reduce(
    (made, { path, value }) => replaced(made, keysOf(inputs, path, true), value),
    inputs.data
  );
  return checkDesign(data, inputs.source, inputs.options);
}
var locateIn = ({ source }, problems) => locate(problems, source);

// packages/core/src/design/results/remembered.ts
function remembered(compute2, most5) {
  const known = /* @__PURE__ */ new Map();
  return (input) => {
    const key = JSON.stringify(input);
    const result = known.get(key) ?? compute2(input);
    known.delete(key);
    known.set(key, result);
    for (const oldest of known.keys()) {
      if (known.size <= most5) break;
      known.delete(oldest);
    }
    return result;
  };
}

// packages/core/src/design/results/coupons.ts
function couponResults({ coupons, source }) {
  const tests = coupons.flatMap(({ coupon, test }) => test === void 0 ? [] : [{ coupon, test }]);
  const problems = [];
  const ofTests = [];
  const results = coupons.flatMap((model) => {
    const found = predict(model, tests);
    if (!("problems" in found)) return [{ model, prediction: found }];
    const alone = tests.length === 0 ? found : predict(model, []);
    if ("problems" in alone) problems.push(...alone.problems);
    else ofTests.push(...found.problems);
    return [];
  });
  if (results.length < coupons.length) {
    throw new SelvageError(locate(problems.length > 0 ? problems : ofTests, parseSource(source.text)));
  }
  return results;
}
function predict({ name, coupon }, tests) {
  try {
    return placed(["coupons", name], () => predictionOf({ coupon, tests }), coupon.specimen);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { problems: error.problems };
  }
}
var predictionOf = remembered(
  ({ coupon, tests }) => predictCoupon(coupon, { tests }),
  50
);
var couponNotes2 = ({ model, prediction }) => uniqueNotes([...model.notes, ...prediction.notes]);
var couponSources = (result) => uniqueSources(
  result.model.sources,
  result.prediction.sources,
  couponNotes2(result).flatMap(({ source }) => source ?? [])
);

// packages/core/src/design/results/coupons-data.ts
function couponData(result) {
  const { model, prediction } = result;
  const { title, coupon, arms: arms2, stitching = null, test } = model;
  return {
    ...title === void 0 ? {} : { title },
    type: coupon.specimen.kind,
    arms: arms2,
    stitching,
    ...test === void 0 ? {} : { test },
    simulated: simulatedData(prediction),
    notes: couponNotes2(result),
    sources: couponSources(result)
  };
}
var interval = ({ median, low, high }) => ({ median, low, high });
function simulatedData(prediction) {
  const { peakForce, onset: onset3, verdict, shares: shares4, zone, discreteness: discreteness2, pointOfNoReturn, splitLength, wedge } = prediction;
  const { result, changes, densities, rows, penetrationDensity: penetrationDensity2, calibrated = false } = prediction;
  return {
    peakForce: peakForce.nominal,
    peakForceInterval: interval(peakForce),
    onset: onset3 ?? null,
    toughness: toughnessData(prediction),
    ...splitLength === void 0 ? {} : splitData(splitLength),
    ...wedge === void 0 ? {} : wedgeData(wedge),
    verdict: {
      first: verdict.first,
      load: verdict.load,
      next: verdict.next ?? null,
      margin: verdict.margin ?? null
    },
    shares: shares4,
    zone: zone ?? null,
    discreteness: discreteness2 ?? null,
    pointOfNoReturn: pointOfNoReturn ?? null,
    penetrationDensity: penetrationDensity2 ?? null,
    calibrated,
    law: lawData(prediction),
    rows: rows.map(({ position, penetrations: penetrations2 }) => ({ position, penetrations: penetrations2 })),
    changes,
    densities: densities.map((point) => ({ ...point, steady: point.steady ?? null })),
    ...result === void 0 ? {} : courseData(result)
  };
}
function toughnessData({ toughness: toughness3 }) {
  if (toughness3 === void 0) return null;
  const { steady, specimen, ceiling = null } = toughness3;
  return {
    steady: steady?.nominal ?? null,
    specimen: specimen.nominal,
    ceiling,
    interval: interval(specimen),
    steadyInterval: steady === void 0 ? null : interval(steady)
  };
}
var splitData = (splitLength) => ({
  splitLength: splitLength.nominal,
  splitLengthInterval: interval(splitLength)
});
var wedgeData = ({ arrested, naturalLength, armStrain }) => ({
  arrested,
  naturalLength,
  armStrain
});
function lawData({ law }) {
  if (law === void 0) return null;
  const { opening: opening2, force, peak: peak2, failure: failure2, measured: measured2 = false } = law;
  return { opening: opening2, force, peak: peak2, failure: failure2, measured: measured2 };
}
var courseData = ({ states, events, resistance, energyError }) => ({
  states: states.map(({ displacement, load, crackLength }) => ({ displacement, load, crackLength })),
  events,
  resistance,
  energyError
});

// packages/core/src/design/results/laminate-blister.ts
function blisterOf(laminate2, entry2, path, notes4) {
  const film = filmOf(laminate2, entry2.interface, [...path, "interface"]);
  const { length: length2, toughness: toughness3 } = entry2;
  const { base: base2 } = film;
  if (entry2.shape === "strip") {
    const strain3 = stripStrain(entry2, path);
    const found2 = placed(path, () => stripBlister(film.laminate, defined({ length: length2, strain: strain3, toughness: toughness3, base: base2 })));
    return { entry: entry2, film, shape: "strip", ...defined({ strain: strain3 }), found: found2, notes: [...found2.notes, ...notes4] };
  }
  const width = widthOf(entry2, path);
  const strain2 = ellipseStrain(entry2, path);
  const found = placed(
    [...path, "strain"],
    () => ellipseBlister(film.laminate, { a: length2 / 2, b: width / 2, strain: strain2, base: base2, ...defined({ toughness: toughness3 }) })
  );
  return { entry: entry2, film, shape: "ellipse", strain: strain2, width, found, notes: [...found.notes, ...notes4] };
}
function filmOf({ plies: plies2, thickness }, below, path) {
  if (!(Number.isInteger(below) && below < plies2.length)) {
    const most5 = plies2.length - 1;
    fail({
      code: "out-of-range",
      message: `interface = ${below}: the laminate has ${plies2.length} ${plies2.length === 1 ? "layer" : "layers"} when built up`,
      allowed: most5 < 1 ? "a laminate of two layers at least" : `a whole number from 1 to ${most5}: the layers below the delamination`,
      path
    });
  }
  const [lower, upper] = [laminate(plies2.slice(0, below)), laminate(plies2.slice(below))];
  return lower.thickness < upper.thickness - 1e-9 * thickness ? { side: "tool", layers: [1, below], laminate: lower, base: upper } : { side: "bag", layers: [below + 1, plies2.length], laminate: upper, base: lower };
}
function stripStrain({ strain: strain2, width }, path) {
  if (width !== void 0) unused("width", "a strip is as wide as it likes, across x", [...path, "width"]);
  if (typeof strain2 === "number" || strain2 === void 0) return strain2;
  return unused("a list of strains", "a strip takes one strain, along x", [...path, "strain"]);
}
function widthOf({ shape, length: length2, width }, path) {
  if (shape === "circle") {
    if (width !== void 0) unused("width", "a circle has its diameter as `length`", [...path, "width"]);
    return length2;
  }
  return width ?? missing3("width", "the whole width of the ellipse along y", path);
}
function ellipseStrain({ strain: strain2 }, path) {
  const needed4 = "strain of the laminate along x, along y and in shear: [x, y, xy]";
  if (strain2 === void 0) return missing3("strain", needed4, path);
  if (typeof strain2 === "number") {
    return fail({
      code: "contradiction",
      message: "one strain is given for a blister that is no strip",
      allowed: needed4,
      path: [...path, "strain"]
    });
  }
  const [x = 0, y = 0, xy = 0] = strain2;
  return [x, y, xy];
}
var unused = (what, allowed, path) => fail({
  code: "contradiction",
  message: `${what} is given for a blister that has no use for it`,
  allowed,
  path,
  atKey: true
});
var missing3 = (key, allowed, path) => fail({ code: "missing-key", message: `missing \`${key}\` in \`${path.join(".")}\``, allowed, path, atKey: true });
function blisterData(result) {
  const { entry: entry2, film, notes: notes4 } = result;
  return {
    shape: entry2.shape,
    interface: entry2.interface,
    side: film.side,
    layers: [...film.layers],
    thickness: film.laminate.thickness,
    length: entry2.length,
    ...result.shape === "strip" ? stripData(result.found, result.strain) : ellipseData(result.found, result),
    ...defined({ toughness: entry2.toughness }),
    notes: notes4,
    sources: result.found.sources
  };
}
function stripData({ criticalStrain, criticalN, G, growthStrain }, strain2) {
  const compressed = strain2 !== void 0 && strain2 < 0;
  return {
    ...defined({ strain: strain2 }),
    criticalStrain,
    criticalN,
    multiplier: compressed ? criticalStrain / strain2 : null,
    G,
    ...growthStrain === void 0 ? {} : { growthStrain, growthMultiplier: compressed ? growthStrain / strain2 : null }
  };
}
function ellipseData(found, { strain: strain2, width }) {
  const { growthMultiplier: growthMultiplier2 } = found;
  return {
    width,
    strain: [...strain2],
    criticalStrain: [...found.strain],
    criticalN: [...found.N],
    multiplier: found.multiplier,
    G: [...found.G],
    ...growthMultiplier2 === void 0 ? {} : { growthStrain: strain2.map((value) => value * growthMultiplier2), growthMultiplier: growthMultiplier2 }
  };
}

// packages/core/src/design/results/laminate-edge.ts
function freeEdgeOf(laminate2, entry2, path, notes4) {
  const found = located([...path, "temperatureChange"], () => edgeDelamination(laminate2, defined(entry2)));
  const tension = firstOf2(found.interfaces, (onset3) => onset3.tension);
  const compression = firstOf2(found.interfaces, (onset3) => onset3.compression);
  return {
    entry: entry2,
    found,
    ...tension === void 0 || compression === void 0 ? {} : { first: { tension, compression } },
    notes: [...found.notes, ...notes4]
  };
}
function located(path, compute2) {
  try {
    return compute2();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(error.problems.map((problem) => ({ path, ...problem })));
  }
}
function firstOf2(interfaces, strainOf) {
  const all = interfaces.flatMap(
    ({ below, single: single2, pair: pair2 }) => [
      ["single", single2],
      ["pair", pair2]
    ].flatMap(
      ([opening2, found]) => found?.onset === void 0 ? [] : [{ below, opening: opening2, strain: strainOf(found.onset) }]
    )
  );
  return all.reduce(
    (least2, one) => least2 === void 0 || Math.abs(one.strain) < Math.abs(least2.strain) * (1 - 1e-9) ? one : least2,
    void 0
  );
}
var openingData = ({ onset: onset3, ...rest }) => ({
  ...rest,
  ...onset3 === void 0 ? {} : { onsetTension: onset3.tension, onsetCompression: onset3.compression }
});
var peelData = ({ moment, relative, sense }) => ({ edgeMoment: moment, relative, sense });
function freeEdgeData({ entry: entry2, found, first: first2, notes: notes4 }) {
  const { strain: strain2, temperatureChange, toughness: toughness3 } = entry2;
  return {
    ...defined({ strain: strain2, temperatureChange, toughness: toughness3 }),
    interfaces: found.interfaces.map(({ single: single2, pair: pair2, peel, angles, ...rest }) => ({
      ...rest,
      angles: [...angles],
      ...single2 === void 0 ? {} : { single: openingData(single2) },
      ...pair2 === void 0 ? {} : { pair: openingData(pair2) },
      peel: peelData(peel)
    })),
    ...found.critical === void 0 ? {} : { critical: { below: found.critical.below, opening: found.critical.opening, ...openingData(found.critical) } },
    ...first2 === void 0 ? {} : { first: first2 },
    midPlanePeel: peelData(found.midPlanePeel),
    notes: notes4,
    sources: found.sources
  };
}

// packages/core/src/design/results/laminate-expansion.ts
function expansionOf(laminate2) {
  const { plies: plies2 } = laminate2;
  const thermal = plies2.every((ply3) => ply3.expansion !== void 0) ? thermalExpansionOf(laminate2) : void 0;
  const moisture2 = plies2.every((ply3) => ply3.moistureExpansion !== void 0) ? moistureExpansionOf(laminate2) : void 0;
  if (thermal === void 0 && moisture2 === void 0) return void 0;
  return defined({ thermal, moisture: moisture2 });
}
var expansionPart = ({ strain: strain2, curvature }) => ({ strain: [...strain2], curvature: [...curvature] });
function expansionData({ thermal, moisture: moisture2 }) {
  return {
    ...thermal === void 0 ? {} : { thermal: expansionPart(thermal) },
    ...moisture2 === void 0 ? {} : { moisture: expansionPart(moisture2) }
  };
}

// packages/core/src/design/results/laminate-panel.ts
var usualModes = 4;
function panelOf(laminate2, entry2, path, notes4) {
  const { length: a, width: b, compression, pressure, modes = usualModes } = entry2;
  if (!Number.isInteger(modes)) {
    fail({
      code: "out-of-range",
      message: `modes = ${modes} is not a whole number`,
      allowed: "a whole number from 1 to 25",
      path: [...path, "modes"]
    });
  }
  const buckling = compression === void 0 ? void 0 : bucklingOf(laminate2, { a, b }, compression, path);
  const dense2 = laminate2.plies.every((ply3) => ply3.density !== void 0);
  const vibration = dense2 ? placed(path, () => plateVibration(laminate2, { a, b }, { modes })) : void 0;
  const deflection = pressure === void 0 ? void 0 : placed([...path, "pressure"], () => plateDeflection(laminate2, { a, b }, { pressure, shape: "uniform" }));
  const found = [buckling, vibration, deflection].filter((one) => one !== void 0);
  return {
    entry: entry2,
    ...buckling === void 0 ? {} : { buckling },
    ...vibration === void 0 ? {} : { vibration },
    ...deflection === void 0 ? {} : { deflection },
    notes: uniqueNotes([...found.flatMap((one) => one.notes), ...notes4]),
    sources: uniqueSources(...found.map((one) => one.sources))
  };
}
function bucklingOf(laminate2, plate, [x, y], path) {
  const at4 = [...path, "compression"];
  if (!(Math.max(x, y) > 0)) {
    fail({
      code: "out-of-range",
      message: "`compression` compresses the panel in no direction",
      allowed: "one of the two above 0; a negative one pulls",
      path: at4
    });
  }
  return placed(at4, () => plateBuckling(laminate2, plate, { Nx: 0 - x, Ny: 0 - y }));
}
var loadData = ({ multiplier, Nx, Ny, m, n }) => ({
  multiplier,
  Nx,
  Ny,
  m: m ?? null,
  n: n ?? null
});
function panelData({
  entry: entry2,
  buckling,
  vibration,
  deflection,
  notes: notes4,
  sources
}) {
  const { length: length2, width, compression, pressure } = entry2;
  return {
    length: length2,
    width,
    ...compression === void 0 ? {} : { compression: [...compression] },
    ...buckling === void 0 ? {} : { buckling: { thin: loadData(buckling.thin), withShear: loadData(buckling.withShear) } },
    ...vibration === void 0 ? {} : {
      modes: vibration.modes.map(({ m, n, thin: thin2, withShear }) => ({
        m,
        n,
        frequencyThin: thin2,
        frequency: withShear
      }))
    },
    ...pressure === void 0 ? {} : { pressure },
    ...deflection === void 0 ? {} : { deflectionThin: deflection.thin, deflection: deflection.withShear },
    notes: notes4,
    sources
  };
}

// packages/core/src/design/results/laminate-checks.ts
function sewnNotes({ name }, { stitching }) {
  const plans = stitching.filter((plan) => plan.laminate === name).map((plan) => plan.name);
  if (plans.length === 0) return [];
  return [
    {
      level: "assumption",
      text: `These numbers are for the unstitched laminate: what thread does to it is not counted (stitch plan ${plans.join(", ")}).`
    }
  ];
}
function laminateChecks(model, design) {
  const { laminate: laminate2, freeEdge, panel, blister } = model;
  const at4 = (key) => ["laminates", model.name, key];
  const sewn = sewnNotes(model, design);
  const problems = [];
  const attempt3 = (compute2) => {
    try {
      return compute2();
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      problems.push(...error.problems);
      return void 0;
    }
  };
  const checks2 = defined({
    expansion: expansionOf(laminate2),
    freeEdge: freeEdge && attempt3(() => freeEdgeOf(laminate2, freeEdge, at4("freeEdge"), sewn)),
    panel: panel && attempt3(() => panelOf(laminate2, panel, at4("panel"), sewn)),
    blister: blister && attempt3(() => blisterOf(laminate2, blister, at4("blister"), sewn))
  });
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(design.source.text)));
  return checks2;
}
var checkSources = ({ expansion: expansion2, freeEdge, panel, blister }) => uniqueSources(
  expansion2?.thermal?.sources ?? [],
  expansion2?.moisture?.sources ?? [],
  freeEdge?.found.sources ?? [],
  panel?.sources ?? [],
  blister?.found.sources ?? []
);
function checksData({ expansion: expansion2, freeEdge, panel, blister }) {
  return {
    ...expansion2 === void 0 ? {} : { expansion: expansionData(expansion2) },
    ...freeEdge === void 0 ? {} : { freeEdge: freeEdgeData(freeEdge) },
    ...panel === void 0 ? {} : { panel: panelData(panel) },
    ...blister === void 0 ? {} : { blister: blisterData(blister) }
  };
}

// packages/core/src/design/results/laminate-sandwich.ts
function sandwichOf(laminate2) {
  return laminate2.plies.some((ply3) => ply3.core === true) ? sandwichChecks(laminate2) : void 0;
}
var wrinklingData = ({ faceModulus, stress, inTheory, deepCore, depth }) => ({
  faceModulus,
  wrinklingStress: stress,
  wrinklingStressInTheory: inTheory,
  wrinklingStressDeepCore: deepCore,
  wrinklingDepth: depth
});
var faceData = ({ thickness, x, y }) => ({ thickness, x: wrinklingData(x), y: wrinklingData(y) });
var directionData = ({ criteria, allen, difference, H: H2 }) => ({
  thinFaces: criteria.thinFaces,
  weakCore: criteria.weakCore,
  bendingStiffness: allen.D,
  bendingStiffnessDifference: difference,
  shearStiffness: allen.S,
  H: H2
});
function sandwichData(sandwich) {
  if (!sandwich.isSandwich) return { isSandwich: false, reason: sandwich.reason };
  const { core: core2, d, tool, bag, x, y } = sandwich;
  return {
    isSandwich: true,
    coreThickness: core2.thickness,
    coreModulus: core2.E,
    coreShearModulusXz: core2.Gx,
    coreShearModulusYz: core2.Gy,
    coreShearStrength: core2.shearStrength ?? null,
    faceDistance: d,
    tool: faceData(tool),
    bag: faceData(bag),
    x: directionData(x),
    y: directionData(y)
  };
}

// packages/core/src/design/results/laminate-shear.ts
function transverseShearData({ H: H2, kx, ky, sums }) {
  return { H: H2.map((row) => [...row]), kx, ky, sums: [...sums] };
}

// packages/core/src/design/results/laminates.ts
function laminateResult(model, design) {
  const { laminate: laminate2 } = model;
  const computed = stiffness(laminate2);
  const constants3 = engineeringConstants(computed);
  const found = diagnosis(laminate2);
  const parameters = laminationParameters(laminate2);
  const shear2 = transverseShear(laminate2);
  const sandwich = sandwichOf(laminate2);
  const checks2 = laminateChecks(model, design);
  const layers = laminate2.plies.map((ply3) => ({ angle: ply3.angle, material: ply3.name }));
  const oneMaterial = new Set(layers.map((layer) => layer.material)).size === 1;
  return {
    model,
    stiffness: computed,
    constants: constants3,
    diagnosis: found,
    laminationParameters: parameters,
    transverseShear: shear2,
    ...sandwich === void 0 ? {} : { sandwich },
    ...checks2,
    arealMass: arealMass2(laminate2),
    canonicalCode: printOrientationCode(layers),
    fullCode: `[${layers.map((layer) => `${layer.angle}${oneMaterial ? "" : layer.material}`).join("/")}]`,
    notes: uniqueNotes([...computed.notes, ...parameters.notes, ...shear2.notes, ...sandwich?.notes ?? []]),
    sources: uniqueSources(
      computed.sources,
      constants3.sources,
      found.sources,
      parameters.sources,
      shear2.sources,
      sandwich?.sources ?? [],
      checkSources(checks2)
    )
  };
}
var plain5 = (matrix) => matrix.map((row) => [...row]);
function laminateData(result) {
  const { model, stiffness: s, constants: constants3, diagnosis: d } = result;
  let z15 = -s.thickness / 2;
  return {
    ...model.title === void 0 ? {} : { title: model.title },
    ...model.code === void 0 ? {} : { code: model.code },
    canonicalCode: result.canonicalCode,
    thickness: s.thickness,
    arealMass: result.arealMass.total ?? null,
    fibreArealMass: result.arealMass.fibre ?? null,
    resinArealMass: result.arealMass.resin ?? null,
    process: model.process,
    plies: model.laminate.plies.map((ply3) => {
      const { name, angle: angle2, thickness, E1, E2, G12, nu12 } = ply3;
      const zBottom = z15;
      z15 += thickness;
      return {
        name,
        angle: angle2,
        thickness,
        zToolSide: zBottom,
        zBagSide: z15,
        E1,
        E2,
        G12,
        nu12,
        density: ply3.density ?? null,
        fibreVolumeFraction: ply3.fibreVolumeFraction ?? null
      };
    }),
    A: plain5(s.A),
    B: plain5(s.B),
    D: plain5(s.D),
    a: plain5(s.a),
    b: plain5(s.b),
    d: plain5(s.d),
    condition: s.condition,
    inPlane: constants3.inPlane,
    flexural: constants3.flexural,
    inPlaneRestrained: constants3.inPlaneRestrained,
    flexuralRestrained: constants3.flexuralRestrained,
    diagnosis: withoutProvenance(d),
    laminationParameters: withoutProvenance(result.laminationParameters),
    transverseShear: transverseShearData(result.transverseShear),
    ...result.sandwich === void 0 ? {} : { sandwich: sandwichData(result.sandwich) },
    ...checksData(result),
    notes: result.notes,
    sources: result.sources
  };
}
function withoutProvenance(result) {
  const { notes: _, sources: __, ...rest } = result;
  return rest;
}

// packages/core/src/design/results/load-of.ts
function loadOf(model) {
  const { N, M: M3, strain: strain2, curvature, temperatureChange, temperatureGradient, moisture: moisture2 } = model;
  return defined({ N, M: M3, strain: strain2, curvature, temperatureChange, temperatureGradient, moisture: moisture2 });
}
function surroundingsOf({
  temperatureChange,
  temperatureGradient,
  moisture: moisture2
}) {
  return defined({ temperatureChange, temperatureGradient, moisture: moisture2 });
}
var isMechanical = ({ N = nothing2, M: M3 = nothing2, strain: strain2 = nothing2, curvature = nothing2 }) => [...N, ...M3, ...strain2, ...curvature].some((value) => value !== null && value !== 0);
var nothing2 = [null, null, null];
var isHeld = ({ strain: strain2 = nothing2, curvature = nothing2 }) => [...strain2, ...curvature].some((value) => value !== null);
function strengthOptionsOf({ strength = {} }) {
  const { tsaiHill, F12star, transverseShearStrength, hashinAlpha, puck } = strength;
  return defined({
    variant: tsaiHill,
    F12star,
    transverseShearStrength,
    alpha: hashinAlpha,
    puck: typeof puck === "object" ? { plus: puck[0] ?? 0, minus: puck[1] ?? 0 } : puck
  });
}

// packages/core/src/design/results/load-residual.ts
function loadResidual(laminate2, load, { residual: residual3 }, judged, options) {
  if (residual3 === void 0) return void 0;
  const free = isHeld(load) ? respond(laminate2, surroundingsOf(load)) : residual3;
  const alone = { mechanical: residual3, residual: void 0 };
  const criteria = failureCriteria.filter((criterion) => judged.some((one) => one.criterion === criterion));
  return {
    response: residual3,
    failures: criteria.map((criterion) => failureUnder(laminate2, alone, criterion, options)),
    curedShape: curedShape(free, laminate2.thickness)
  };
}

// packages/core/src/design/results/load-sandwich.ts
var residual2 = {
  level: "assumption",
  text: "The stress of a face holds that of temperature and moisture, which does not grow with the load: its ratio compares stresses and is no multiple of the load."
};
function loadedSandwich(model, load, laminate2) {
  const [Vx = 0, Vy = 0] = model.shear ?? [];
  const shear2 = model.shear === void 0 ? void 0 : { Vx, Vy };
  const found = sandwichChecks(laminate2, defined({ load, shear: shear2 }));
  if (!found.isSandwich) return void 0;
  const { temperatureChange = 0, temperatureGradient = 0, moisture: moisture2 = 0 } = model;
  const free = [temperatureChange, temperatureGradient, moisture2].flat().every((value) => value === 0);
  return free ? found : { ...found, notes: [...found.notes, residual2] };
}
var wrinklingData2 = ({ faceStress: faceStress2, stress, ratio }) => ({
  faceStress: faceStress2 ?? null,
  wrinklingStress: stress,
  ratio: ratio ?? null
});
function loadedSandwichData({ tool, bag, coreShear: coreShear2 }) {
  return {
    tool: { x: wrinklingData2(tool.x), y: wrinklingData2(tool.y) },
    bag: { x: wrinklingData2(bag.x), y: wrinklingData2(bag.y) },
    ...coreShear2 === void 0 ? {} : { coreShear: { stress: coreShear2.stress, nominal: coreShear2.nominal, ratio: coreShear2.ratio ?? null } }
  };
}

// packages/core/src/design/results/load-shear.ts
var smooth = 24;
var pointsPerPly = (plies2) => 2 * Math.max(1, Math.ceil(smooth / plies2 / 2)) + 1;
function interlaminarShearOf(model, laminate2) {
  if (model.shear === void 0) return void 0;
  const [Vx, Vy] = model.shear;
  return placed(
    ["loads", model.name, "shear"],
    () => shearStressDistribution(laminate2, { Vx, Vy }, pointsPerPly(laminate2.plies.length))
  );
}
function interlaminarShearData({ peakXz, peakYz, points: points4 }) {
  return { peakXz, peakYz, points: points4 };
}

// packages/core/src/design/results/load-envelope.ts
function componentsOf(response) {
  const { N, M: M3 } = response ?? { N: [0, 0, 0], M: [0, 0, 0] };
  return { Nx: N[0], Ny: N[1], Nxy: N[2], Mx: M3[0], My: M3[1], Mxy: M3[2] };
}
var sizeOf = (values, thickness) => (name) => Math.abs(values[name]) * (name.startsWith("N") ? thickness : 1);
var partner = {
  Nx: "Ny",
  Ny: "Nx",
  Nxy: "Nx",
  Mx: "My",
  My: "Mx",
  Mxy: "Mx"
};
function planeOf(atWork) {
  const [first2 = "Nx", second2 = partner[first2]] = atWork;
  return loadComponents.indexOf(first2) < loadComponents.indexOf(second2) ? [first2, second2] : [second2, first2];
}
function loadEnvelope(laminate2, load, solved, choices) {
  const mechanical = componentsOf(solved.mechanical);
  const reactions = componentsOf(solved.residual);
  const size4 = sizeOf(mechanical, laminate2.thickness);
  const noise2 = 1e-9 * Math.max(...loadComponents.map(size4));
  const atWork = loadComponents.filter((name) => size4(name) > noise2);
  const held3 = loadComponents.filter((name) => sizeOf(reactions, laminate2.thickness)(name) > noise2);
  const components = choices.components ?? planeOf(atWork);
  const plane = solvePlane(laminate2, components, surroundingsOf(load));
  const [x, y] = [
    mechanical[components[0]] + reactions[components[0]],
    mechanical[components[1]] + reactions[components[1]]
  ];
  return {
    components,
    load: { x, y },
    others: loadComponents.filter(
      (name) => (atWork.includes(name) || held3.includes(name)) && !components.includes(name)
    ),
    held: held3.length > 0,
    envelopes: choices.criteria.map((criterion) => envelopeOf(laminate2, plane, { ...choices.options, criterion }))
  };
}

// packages/core/src/design/results/load-strength.ts
function hasStrengths({ plies: plies2 }) {
  const strong = plies2.some((ply3) => ply3.strengths !== void 0);
  return strong && plies2.every((ply3) => ply3.core === true || ply3.strengths !== void 0);
}
var isUnidirectional = (ply3) => ply3.strengths !== void 0 && ply3.core !== true && !isCloth(ply3) && !isIsotropic(ply3);
var drawn = ["maxStress", "tsaiWu", "hashin", "puck"];
function loadStrength(model, laminate2, load, solved) {
  if (!hasStrengths(laminate2)) return { failures: [], strengthNotes: [] };
  const { strength = {} } = model;
  const path = ["loads", model.name, "strength"];
  const options = strengthOptionsOf(model);
  const failures2 = [];
  const faults2 = /* @__PURE__ */ new Map();
  for (const criterion2 of failureCriteria) {
    try {
      failures2.push(failureUnder(laminate2, solved, criterion2, options));
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      faults2.set(criterion2, error);
    }
  }
  const wanted = (criterion2, at4) => {
    const fault2 = faults2.get(criterion2);
    if (fault2 === void 0) return criterion2;
    return placed(at4, () => fail(fault2.problems[0] ?? { code: "not-computable", message: fault2.message }));
  };
  if (strength.puck !== void 0 && laminate2.plies.some(isUnidirectional)) wanted("puck", [...path, "puck"]);
  const criterion = wanted(strength.criterion ?? "hashin", [...path, "criterion"]);
  const criteria = strength.envelopeCriteria?.map((one, i) => wanted(one, [...path, "envelopeCriteria", i])) ?? drawn.filter((one) => !faults2.has(one));
  const notes4 = [...faults2].map(([one, fault2]) => leftOut(one, fault2));
  if (!isMechanical(load)) return { failures: failures2.map(withoutUnloaded), strengthNotes: notes4 };
  const discount = {
    criterion,
    ...options,
    ...defined({ discount: strength.discount, factor: strength.remainingStiffness, collapse: strength.collapse })
  };
  const progressive = isPrescribed(load) ? raisesForces : laminate2.plies.length > mostFollowed ? tooMany(laminate2.plies.length) : orNote("Failure layer by layer", () => progressiveFailure(laminate2, load, discount));
  const plane = { components: strength.envelope, criteria, options };
  const envelope = orNote("The failure envelope", () => loadEnvelope(laminate2, load, solved, plane));
  return {
    failures: failures2,
    ..."level" in progressive ? {} : { progressive },
    ..."level" in envelope ? {} : { envelope },
    strengthNotes: [...notes4, ...[progressive, envelope].filter((one) => "level" in one)]
  };
}
var withoutUnloaded = (found) => ({
  ...found,
  notes: found.notes.filter((note2) => note2 !== unloaded)
});
var isPrescribed = (load) => isHeld(load) && [...load.strain ?? [], ...load.curvature ?? []].some((value) => value !== null && value !== 0);
var mostFollowed = 200;
var tooMany = (count) => ({
  level: "assumption",
  text: `Failure is not followed layer by layer: the laminate has ${count} plies, more than ${mostFollowed}.`
});
var raisesForces = {
  level: "assumption",
  text: "Failure is not followed layer by layer: this load prescribes a deformation, and ply discount raises forces."
};
function orNote(what, compute2) {
  try {
    return compute2();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { level: "warning", text: `${what} is not computed: ${error.message}.` };
  }
}
var isInclination = ({ problems }) => problems.some(({ code, message }) => code === "out-of-range" && message.includes("inclination"));
var leftOut = (criterion, fault2) => ({
  level: "warning",
  text: `The criterion ${criterion} is left out: ${fault2.message}.${isInclination(fault2) ? " `strength: { puck: [plus, minus] }` takes other inclinations." : ""}`
});

// packages/core/src/design/results/load-strength-data.ts
var first = ({ ratio, ply: ply3, face, mode }) => ({
  ratio: ratio ?? null,
  ply: ply3 ?? null,
  face: face ?? null,
  mode
});
function failureData(failures2) {
  return Object.fromEntries(
    failures2.map((one) => [
      one.criterion,
      {
        ...first(one),
        ...one.withoutResidual === void 0 ? {} : { ratioWithoutResidual: one.withoutResidual.ratio ?? null }
      }
    ])
  );
}
var pliesData = ({ plies: plies2 }) => plies2.map(({ name, angle: angle2, top, middle, bottom }) => ({ name, angle: angle2, top, middle, bottom }));
function residualData({ response, failures: failures2, curedShape: curedShape2 }) {
  const { N, M: M3, strain: strain2, curvature } = response;
  return {
    residual: { N, M: M3, strain: strain2, curvature, plies: pliesData(response), failure: failureData(failures2) },
    curedShape: curedShapeData(curedShape2)
  };
}
function curedShapeData({ kind: kind2, curvature, principal, direction: direction2, riseOfThickness }) {
  return { shape: kind2, curvature, principal, direction: direction2, riseOfThickness: riseOfThickness ?? null };
}
var pointData = ({ strain: strain2, curvature }) => ({ strain: strain2, curvature });
var stepData = ({ ratio, cascade, plies: plies2, before: before2, after, stiffnessShare, inPlane: inPlane2 }) => ({
  ratio,
  cascade,
  plies: plies2,
  before: pointData(before2),
  after: pointData(after),
  stiffnessShare,
  inPlane: inPlane2
});
function progressiveData(found) {
  const { criterion, discount, factor, collapse, firstPly, lastPly, collapsed, steps, curve } = found;
  return {
    criterion,
    discount,
    remainingStiffness: factor,
    collapse,
    firstPly: stepData(firstPly),
    lastPly: stepData(lastPly),
    collapsed,
    steps: steps.map(stepData),
    curve
  };
}
function envelopeData({ components, load, envelopes }) {
  return {
    components,
    load: [load.x, load.y],
    criteria: Object.fromEntries(
      envelopes.map(({ criterion, points: points4 }) => [criterion, points4.map(({ x, y, ply: ply3, mode }) => [x, y, ply3, mode])])
    )
  };
}

// packages/core/src/design/results/loads.ts
function loadResult(model, laminate2, source) {
  const stack = laminate2.laminate;
  const load = loadOf(model);
  try {
    return placed(["loads", model.name], () => {
      const solved = solveLoad(stack, load);
      const strength = loadStrength(model, stack, load, solved);
      return {
        model,
        laminate: laminate2,
        response: solved.residual === void 0 ? solved.mechanical : respond(stack, load),
        ...strength,
        ...defined({
          residual: loadResidual(stack, load, solved, strength.failures, strengthOptionsOf(model)),
          interlaminarShear: interlaminarShearOf(model, stack),
          sandwich: loadedSandwich(model, load, stack)
        })
      };
    });
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(locate(error.problems, parseSource(source.text)));
  }
}
var parts = ({ response, failures: failures2, residual: residual3, progressive, envelope, interlaminarShear, sandwich }) => [
  response,
  ...failures2,
  residual3?.curedShape,
  progressive,
  ...envelope?.envelopes ?? [],
  interlaminarShear,
  sandwich
].filter((part) => part !== void 0);
var loadNotes = (result) => uniqueNotes([...parts(result).flatMap(({ notes: notes4 }) => notes4), ...result.strengthNotes]);
var loadSources = (result) => uniqueSources(
  ...parts(result).map(({ sources }) => sources),
  loadNotes(result).flatMap(({ source }) => source ?? [])
);
function loadData2(result) {
  const { model, response, failures: failures2, residual: residual3, progressive, envelope, interlaminarShear, sandwich } = result;
  const { temperatureChange, temperatureGradient, moisture: moisture2 } = model;
  return {
    laminate: model.laminate,
    N: response.N,
    M: response.M,
    ...defined({ temperatureChange, temperatureGradient, moisture: moisture2 }),
    strain: response.strain,
    curvature: response.curvature,
    plies: pliesData(response),
    failure: failureData(failures2),
    ...progressive === void 0 ? {} : { progressive: progressiveData(progressive) },
    ...envelope === void 0 ? {} : { envelope: envelopeData(envelope) },
    ...residual3 === void 0 ? {} : residualData(residual3),
    ...model.shear === void 0 ? {} : { shear: model.shear },
    ...interlaminarShear === void 0 ? {} : { interlaminarShear: interlaminarShearData(interlaminarShear) },
    ...sandwich === void 0 ? {} : { sandwich: loadedSandwichData(sandwich) },
    notes: loadNotes(result),
    sources: loadSources(result)
  };
}

// packages/core/src/design/results/materials.ts
function distinctFibres({ fibre: fibre2, weftFibre, layers = [] }) {
  const all = [...layers.flatMap((layer) => layer.fibre ?? []), fibre2, ...weftFibre === void 0 ? [] : [weftFibre]];
  return new Map(all.map((one) => [one.name, one]));
}
var total2 = (values) => values.reduce((sum5, value) => sum5 + (value ?? 0), 0);
function curedFabric(laminates, fabric2) {
  const plies2 = fabricPlies(fabric2);
  const crimp = fabricCrimp(fabric2);
  const fibres = fabricFibres(fabric2);
  const known = distinctFibres(fabric2);
  return {
    laminates,
    fabric: fabric2,
    plies: plies2,
    fibres,
    thickness: total2(plies2.map((ply3) => ply3.thickness)),
    arealMass: total2(plies2.map(arealMass)),
    resinArealMass: total2(plies2.map((ply3) => ply3.resinArealMass)),
    ...crimp === void 0 ? {} : { crimp },
    models: fibres.flatMap(({ name }) => {
      const fibre2 = known.get(name);
      return fibre2 === void 0 ? [] : [{ fibre: name, comparison: compareMicromechanics({ ...fabric2, fibre: fibre2 }) }];
    })
  };
}
function fabricResult({ name, cured }) {
  const states = cured.map(({ laminates, fabric: fabric2 }) => curedFabric(laminates, fabric2));
  const compared2 = states.flatMap((state) => state.models.map(({ comparison }) => comparison));
  const plies2 = states.flatMap((state) => state.plies);
  return {
    kind: "fabric",
    name,
    cured: states,
    notes: uniqueNotes([...plies2, ...compared2].flatMap(({ notes: notes4 }) => notes4)),
    sources: uniqueSources(...[...plies2, ...compared2].map(({ sources }) => sources))
  };
}
function materialResults({ materials }) {
  return materials.map((model) => {
    if (model.kind === "fabric") return fabricResult(model);
    const { name, found } = model;
    return { kind: "ply", name, model, notes: found.notes, sources: found.sources };
  });
}

// packages/core/src/design/results/materials-data.ts
var plyData2 = (ply3) => {
  const { angle: angle2, thickness, E1, E2, G12, nu12, G13 = null, G23 = null, nu23 = null, density = null } = ply3;
  const { strengths: strengths2 = null } = ply3;
  const { alpha1 = null, alpha2 = null } = ply3.expansion ?? {};
  const { beta1 = null, beta2 = null } = ply3.moistureExpansion ?? {};
  const elastic2 = { E1, E2, G12, nu12, G13, G23, nu23 };
  return { angle: angle2, thickness, density, ...elastic2, alpha1, alpha2, beta1, beta2, strengths: strengths2 };
};
function modelsData({ properties }) {
  const groups2 = { used: {}, usedModel: {} };
  const put = (group2, property, value) => {
    if (value === void 0) return;
    const held3 = groups2[group2] ?? {};
    held3[property] = value;
    groups2[group2] = held3;
  };
  for (const { property, values, bounds, relativeSpread } of properties) {
    for (const { rule, value, role, xi } of values) {
      put(rule, property, value);
      if (rule === "halpin-tsai") put("xi", property, xi);
      if (role !== "used") continue;
      put("used", property, value);
      put("usedModel", property, rule);
    }
    put("series", property, bounds?.reuss);
    put("parallel", property, bounds?.voigt);
    put("relativeSpread", property, relativeSpread);
  }
  return groups2;
}
function crimpData({ crimp }) {
  if (crimp === void 0) return null;
  const { basis, k1, k2, geometry } = crimp;
  const factors2 = { basis, warpFactor: k1, weftFactor: k2 };
  if (geometry === void 0) return factors2;
  const { warp: warp2, weft: weft2, high } = geometry;
  return {
    ...factors2,
    ...high === void 0 ? {} : { warpFactorHigh: high.E1, weftFactorHigh: high.E2 },
    warpAngle: warp2.angle,
    weftAngle: weft2.angle,
    warpSurplusLength: warp2.crimp,
    weftSurplusLength: weft2.crimp
  };
}
var byFibre = (models) => Object.fromEntries(models.map(({ fibre: fibre2, comparison }) => [fibre2, modelsData(comparison)]));
function curedData(state) {
  const { laminates, fabric: fabric2, thickness, arealMass: arealMass3, resinArealMass: resinArealMass2 } = state;
  return {
    laminates,
    fibreVolumeFraction: fabric2.fibreVolumeFraction,
    voidFraction: fabric2.voidFraction ?? 0,
    voidModel: fabric2.voidModel ?? "mass-only",
    thickness,
    arealMass: arealMass3,
    resinArealMass: resinArealMass2,
    resinMassFraction: resinArealMass2 / arealMass3,
    density: arealMass3 / thickness,
    crimp: crimpData(state),
    plies: state.plies.map(plyData2),
    models: byFibre(state.models)
  };
}
function listedData({ model }) {
  const { fibre: fibre2, resin: resin2, fibreVolumeFraction, architecture, warpShare, namedBy, found } = model;
  const { E1, E2, G12, consistent, fibreVolumeFractionNeeded = null, fibreModulusNeeded = null } = found;
  return {
    fibre: fibre2.name,
    resin: resin2.name,
    fibreVolumeFraction,
    architecture,
    namedBy,
    ...warpShare === void 0 ? {} : { warpShare },
    consistency: {
      consistent,
      listed: { E1: E1.given, E2: E2.given, G12: G12.given },
      fromConstituents: { E1: E1.expected, E2: E2.expected, G12: G12.expected },
      departure: { E1: E1.departure, E2: E2.departure, G12: G12.departure },
      fibreVolumeFractionNeeded,
      fibreModulusNeeded
    }
  };
}
function materialData(result) {
  const { kind: kind2, notes: notes4, sources } = result;
  if (result.kind === "ply") return { kind: kind2, ...listedData(result), notes: notes4, sources };
  const [first2] = result.cured;
  const { architecture, weave, resin: resin2, arealMass: arealMass3, warpShare } = first2?.fabric ?? {};
  return {
    kind: kind2,
    architecture,
    ...weave === void 0 ? {} : { weave },
    ...architecture === "woven" ? { warpShare: warpShare ?? 0.5 } : {},
    resin: resin2?.name,
    fibreArealMass: arealMass3,
    fibres: (first2?.fibres ?? []).map(({ name, arealMass: fibreArealMass }) => ({ name, fibreArealMass })),
    cured: result.cured.map(curedData),
    notes: notes4,
    sources
  };
}

// packages/core/src/design/results/stitch-crack.ts
var anyBed = 1e10;
var close2 = 1e-9;
function midPlaneOf({ plies: plies2, thickness }) {
  const depth = thickness / 2;
  let height = 0;
  for (const [i, ply3] of plies2.entries()) {
    height += ply3.thickness;
    if (Math.abs(height - depth) <= close2 * thickness) return { depth, below: i + 1 };
    if (height > depth) return { depth, below: i, inside: i + 1 };
  }
  return { depth, below: plies2.length };
}
function halves(stack) {
  const { below, inside } = midPlaneOf(stack);
  const { plies: plies2 } = stack;
  const cut = inside === void 0 ? void 0 : plies2[below];
  if (cut === void 0) return [plies2.slice(0, below), plies2.slice(below)];
  const under = stack.thickness / 2 - plies2.slice(0, below).reduce((sum5, ply3) => sum5 + ply3.thickness, 0);
  return [
    [...plies2.slice(0, below), { ...cut, thickness: under }],
    [{ ...cut, thickness: cut.thickness - under }, ...plies2.slice(below + 1)]
  ];
}
function halfLaminateArms(stack, turn) {
  const [tool, bag] = halves(stack).map(
    (plies2) => laminate(plies2.map((ply3) => ({ ...ply3, angle: ply3.angle + turn })))
  );
  return [armOf(tool, { crackFace: "bottom", E3: anyBed }), armOf(bag, { crackFace: "top", E3: anyBed })];
}

// packages/core/src/design/results/stitch-growth.ts
function growthOf(model, { laminate: laminate2 }, law) {
  const { pattern: pattern2 } = model.plan;
  const { rowsMetAcross: rowsMetAcross2, rowsMetAlong: rowsMetAlong2 } = model.summary;
  const known = new Set(laminate2.notes.map(({ text: text3 }) => text3));
  const grown = (turn, rowDistance, bandWidth) => {
    const arms2 = halfLaminateArms(laminate2, turn);
    const found = growthIn(arms2, model.summary.penetrationDensity, law, defined({ rowDistance, length: bandWidth }));
    return { ...found, notes: found.notes.filter(({ text: text3 }) => !known.has(text3)) };
  };
  const band3 = pattern2.kind === "rows" ? countedWidth(pattern2) : void 0;
  const across2 = grown(90, rowsMetAcross2?.spacing, band3);
  const along2 = band3 === void 0 ? grown(0, rowsMetAlong2.spacing) : void 0;
  return {
    across: across2.growth,
    ...along2 === void 0 ? {} : { along: along2.growth },
    notes: [
      { level: "assumption", text: "the rows run along x of the laminate" },
      ...along2 === void 0 ? across2.notes : directed(across2.notes, along2.notes)
    ],
    sources: uniqueSources(across2.sources, along2?.sources ?? [])
  };
}
function growthIn(arms2, penetrationDensity2, law, rows) {
  const [arm2, otherArm] = arms2.map(({ bendingStiffness, thickness }) => ({ bendingStiffness, thickness }));
  const found = toughness({ law: { ...law, notes: [] }, penetrationDensity: penetrationDensity2, bondToughness: 0, arm: arm2, otherArm, ...rows });
  const { bridgingLength: bridgingLength2 = 0, zone = { low: 0, high: 0, needed: 0 }, discreteness: discreteness2 } = found;
  return {
    growth: defined({
      bridgingLength: bridgingLength2,
      zone,
      rowDistance: rows.rowDistance,
      discreteness: discreteness2,
      ceiling: armCeiling(...arms2),
      bandWidth: rows.length
    }),
    notes: uniqueNotes([...found.notes, ...arms2.flatMap(({ notes: notes4 }) => notes4)]),
    sources: uniqueSources(found.sources, ...arms2.map(({ sources }) => sources))
  };
}
function directed(across2, along2) {
  const of = (words3, notes4, others) => notes4.map(
    (note2) => others.some(({ text: text3 }) => text3 === note2.text) ? note2 : { ...note2, text: `growing ${words3} the rows: ${note2.text}` }
  );
  return uniqueNotes([...of("across", across2, along2), ...of("along", along2, across2)]);
}

// packages/core/src/design/results/stitch-needs.ts
function crossing({ plan }) {
  const { legsAbove, legsBelow, lockDepth } = stitchType(plan.type);
  const legs = lockDepth < 1 ? [legsAbove, legsBelow] : [legsAbove];
  const { needleThread, underThread = needleThread } = plan;
  const threads = [
    ...legs.some(({ needle }) => needle > 0) ? [needleThread] : [],
    ...legs.some(({ under }) => under > 0) ? [underThread] : []
  ];
  return [...new Map(threads.map((thread) => [thread.name, thread])).values()];
}
function missingForLaw(model, laminate2) {
  const threads = crossing(model).flatMap(
    (thread) => ["tenacity", "modulus"].flatMap(
      (key) => thread[key] === void 0 ? [`the ${key} of thread ${thread.name}`] : []
    )
  );
  return [...missingLaminate(laminate2), ...threads];
}
function missingLaminate(laminate2) {
  if (laminate2 === void 0) return ["the laminate that is stitched (laminate)"];
  const core2 = laminate2.laminate.plies.find((ply3) => ply3.core === true);
  return core2 === void 0 ? [] : [`a laminate without a core (${laminate2.name} has ${core2.name})`];
}
var [dense, light] = [1650, 1100];
function threadCautions(model) {
  const { anchorEfficiency, frictionStress } = model.bridging.parameters;
  return crossing(model).flatMap(({ name, density }) => {
    if (density > dense && anchorEfficiency === void 0) {
      const text3 = `thread ${name} is as dense as glass or carbon, which keep far less strength at a lock or bend than assumed here, glass 10 to 25 %, carbon 5 to 15 %: give bridging.lockEfficiency`;
      return [{ level: "warning", text: text3, source: "common-practice" }];
    }
    if (density < light && frictionStress === void 0) {
      const text3 = `thread ${name} is as light as polyethylene, whose friction in resin lies at the low end of the usual range or below it: give bridging.friction`;
      return [{ level: "warning", text: text3, source: "common-practice" }];
    }
    return [];
  });
}

// packages/core/src/design/results/stitch-holding.ts
var stitchLaw = remembered((input) => {
  const law = bridgingLaw(input);
  return { law, interval: bridgingInterval(input, input.path === void 0 ? {} : { samples: 200 }) };
}, 60);
function stitchHolding(model, laminate2) {
  const { plan, bridging, summary } = model;
  const { measured: measured2, measuredVariation, legAngle = 0 } = bridging;
  const edgeBand = plan.pattern.kind === "rows";
  const missing5 = missingForLaw(model, laminate2);
  const splits = laminate2 !== void 0 && missingLaminate(laminate2).length === 0;
  const input = laminate2 === void 0 || missing5.length > 0 ? void 0 : penetrationOf(model, laminate2.laminate.thickness);
  const computed = input === void 0 ? void 0 : stitchLaw(legAngle > 0 ? { ...input, path: { angle: legAngle } } : input);
  const opening2 = measured2 === void 0 ? computed : { law: measured2, interval: measuredInterval(measured2, measuredVariation) };
  const sliding = input === void 0 ? void 0 : stitchLaw({ ...input, path: { angle: 90 } });
  const growth2 = splits && opening2 !== void 0 ? growthOf(model, laminate2, opening2.law) : void 0;
  const laws = [opening2, ...measured2 === void 0 ? [] : [computed], sliding].filter((one) => one !== void 0);
  return defined({
    missing: missing5,
    edgeBand,
    crack: splits ? midPlaneOf(laminate2.laminate) : void 0,
    opening: opening2,
    computedOpening: measured2 === void 0 ? void 0 : computed,
    sliding,
    toughnessAdded: edgeBand || opening2 === void 0 ? void 0 : added(summary.penetrationDensity, opening2),
    across: growth2?.across,
    along: growth2?.along,
    notes: withoutBeginnings(
      uniqueNotes([
        ...computed === void 0 ? [] : threadCautions(model),
        ...laws.flatMap(({ law, interval: interval3 }) => [...law.notes, ...interval3?.notes ?? []]),
        ...leanNotes(legAngle, computed),
        ...computed === void 0 ? [] : [modelError]
      ])
    ),
    growthNotes: growth2?.notes ?? [],
    sources: uniqueSources(
      ...laws.map(({ law }) => law.sources),
      edgeBand || opening2 === void 0 ? [] : ["bao-suo-1992"],
      growth2?.sources ?? []
    )
  });
}
function added(density, { law, interval: interval3 }) {
  const value = density * law.work;
  if (interval3 === void 0) return { value };
  const { median, low, high } = interval3.work;
  return { value, interval: { median: density * median, low: density * low, high: density * high } };
}
var modelError = {
  level: "assumption",
  text: "the ranges hold the scatter of what was not measured, not the error of the model: from yarn data alone what stitches add is right within a factor of 2 to 3, rather too low than too high; a measured curve of one stitch is worth more than all of this"
};
function leanNotes(angle2, computed) {
  if (angle2 === 0 || computed === void 0) return [];
  const text3 = `opening with legs that lean by ${angle2}\xB0: the crack is taken to move at this angle to the thread, and the opening is the length of that path`;
  return [{ level: "assumption", text: text3 }];
}
var withoutBeginnings = (notes4) => notes4.filter((note2) => !notes4.some(({ text: text3 }) => text3 !== note2.text && text3.startsWith(note2.text)));

// packages/core/src/design/results/stitch-holding-data.ts
function holdingData(holding) {
  const { crack, opening: opening2, computedOpening, sliding, toughnessAdded, across: across2, along: along2 } = holding;
  return {
    missing: holding.missing,
    edgeBand: holding.edgeBand,
    crackDepth: crack?.depth ?? null,
    interface: crack === void 0 || crack.inside !== void 0 ? null : crack.below,
    opening: opening2 === void 0 ? null : lawData2(opening2),
    ...computedOpening === void 0 ? {} : { computedOpening: lawData2(computedOpening) },
    sliding: sliding === void 0 ? null : lawData2(sliding),
    toughnessAdded: toughnessAdded?.value ?? null,
    ...toughnessAdded?.interval === void 0 ? {} : { toughnessAddedInterval: intervalData(toughnessAdded.interval) },
    across: across2 === void 0 ? null : growthData(across2),
    along: along2 === void 0 ? null : growthData(along2),
    notes: [...holding.notes, ...holding.growthNotes],
    sources: holding.sources
  };
}
var intervalData = ({ median, low, high }) => ({ median, low, high });
function lawData2({ law, interval: interval3 }) {
  return {
    measured: law.measured ?? false,
    peakForce: law.peak.force,
    openingAtPeak: law.peak.opening,
    work: law.work,
    failure: law.failure,
    ...interval3 === void 0 ? {} : {
      peakForceInterval: intervalData(interval3.peak),
      openingAtPeakInterval: intervalData(interval3.opening),
      workInterval: intervalData(interval3.work),
      shares: interval3.failures
    },
    curve: { opening: law.opening, force: law.force }
  };
}
var growthData = ({ bridgingLength: bridgingLength2, zone, rowDistance, discreteness: discreteness2, ceiling, bandWidth }) => defined({ bridgingLength: bridgingLength2, zone, rowDistance, discreteness: discreteness2?.ratio, ceiling, bandWidth });

// packages/core/src/design/results/stitch-price.ts
var within2 = 15;
function fibresOf(ply3, i) {
  if (ply3.core === true || isIsotropic(ply3)) return [];
  const cloth = isCloth(ply3);
  const of = (turn, E1, nu12) => ({
    layer: i + 1,
    material: ply3.name,
    angle: fibreAngle(ply3.angle + turn),
    cloth,
    E1,
    G12: ply3.G12,
    nu12
  });
  const all = [of(0, ply3.E1, ply3.nu12), ...cloth ? [of(90, ply3.E2, ply3.nu12 * ply3.E2 / ply3.E1)] : []];
  return all.filter(({ E1, G12, nu12 }) => E1 / G12 >= 2 * (1 + nu12));
}
var stiffest = (fibres) => fibres.reduce((best, one) => best === void 0 || one.E1 > best.E1 ? one : best, void 0);
function stitchPrice(model, laminate2) {
  if (laminate2 === void 0) return nothing3("the laminate that is stitched (laminate)");
  const fibres = laminate2.laminate.plies.flatMap(fibresOf);
  const most5 = stiffest(fibres);
  if (most5 === void 0) return nothing3("a layer whose fibres run in one or two directions");
  const pitch = pitchOf(model);
  const lines = holeDistances(model);
  const near5 = (direction2) => stiffest(fibres.filter(({ angle: angle2 }) => Math.abs(fibreAngle(angle2 - direction2)) <= within2));
  const loaded = (chosen, spacing2) => {
    if (chosen === void 0) return void 0;
    const { layer, material: material2, angle: angle2, cloth } = chosen;
    return { layer, material: material2, angle: angle2, cloth, spacing: spacing2, found: knockdown(model, chosen, spacing2, pitch) };
  };
  try {
    const [along2, across2] = [loaded(near5(0), lines.along), loaded(near5(90), lines.across)];
    const parts2 = [along2, across2].filter((one) => one !== void 0);
    const founds = parts2.length > 0 ? parts2.map(({ found }) => found) : [knockdown(model, most5, lines.along, pitch)];
    return defined({
      missing: [
        ...along2 === void 0 ? [`fibres within ${within2} degrees of x, along the rows`] : [],
        ...across2 === void 0 ? [`fibres within ${within2} degrees of y, across the rows`] : []
      ],
      along: along2,
      across: across2,
      common: commonOf(founds),
      fibreVolumeFraction: fibreContentOf(laminate2),
      notes: uniqueNotes([...founds.flatMap(({ notes: notes4 }) => notes4), ...furtherNotes(model, parts2)]),
      sources: uniqueSources(...founds.map(({ sources }) => sources))
    });
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return nothing3(...error.problems.map(({ message, allowed }) => `${message}; would do: ${allowed ?? "less"}`));
  }
}
var nothing3 = (...missing5) => ({ missing: missing5, notes: [], sources: [] });
function knockdown(model, ply3, spacing2, pitch) {
  const { penetrationDensity: penetrationDensity2, bundleDiameter, needleDiameter: needleDiameter2 } = model.summary;
  const { E1, G12, nu12 } = ply3;
  const { holeWidth: holeWidth2 } = model.plan;
  return inPlaneKnockdown(
    defined({ ply: { E1, G12, nu12 }, spacing: spacing2, pitch, penetrationDensity: penetrationDensity2, bundleDiameter, holeWidth: holeWidth2, needleDiameter: needleDiameter2 })
  );
}
function pitchOf({ plan: { pattern: pattern2 }, summary }) {
  if (pattern2.kind === "rows") return Math.min(...pattern2.rows.map((row) => row.pitch));
  if (pattern2.kind === "crossing") return Math.min(pattern2.pitch, pattern2.second.pitch);
  return pattern2.kind === "zigzag" && pattern2.swing >= summary.holeWidth ? 2 * pattern2.pitch : pattern2.pitch;
}
function holeDistances({ plan: { pattern: pattern2 }, summary }) {
  switch (pattern2.kind) {
    case "rows": {
      const distance2 = summary.rowsMetAcross?.spacing ?? countedWidth(pattern2);
      return { along: distance2, across: Math.min(...pattern2.rows.map((row) => row.pitch)) };
    }
    case "crossing": {
      const { pitch, rowSpacing, second: second2 } = pattern2;
      return { along: Math.min(rowSpacing, second2.pitch), across: Math.min(pitch, second2.rowSpacing) };
    }
    case "zigzag": {
      const lines = pattern2.swing >= summary.holeWidth ? 2 : 1;
      return { along: pattern2.rowSpacing / lines, across: pattern2.pitch };
    }
    default:
      return { along: pattern2.rowSpacing, across: pattern2.pitch };
  }
}
function commonOf(founds) {
  const [first2] = founds;
  if (first2 === void 0) return void 0;
  const { perforation, crowding, published } = first2;
  const all = founds.map((one) => one.crowding.upper);
  const upper = {
    value: all.reduce((sum5, { value }) => sum5 + value, 0) / all.length,
    low: Math.min(...all.map(({ low }) => low)),
    high: Math.max(...all.map(({ high }) => high))
  };
  return { perforation, published, crowding: { lower: crowding.lower, upper } };
}
function fibreContentOf({ laminate: laminate2, solidFibreThickness: solidFibreThickness2 }) {
  const solid = solidOf(laminate2);
  return solidFibreThickness2 === void 0 || solid === 0 ? void 0 : solidFibreThickness2 / solid;
}
var solidOf = ({ plies: plies2 }) => plies2.reduce((sum5, ply3) => ply3.core === true ? sum5 : sum5 + ply3.thickness, 0);
function furtherNotes({ plan, summary }, parts2) {
  const cloths = [...new Set(parts2.filter(({ cloth }) => cloth).map(({ material: material2 }) => material2))];
  const { pattern: pattern2 } = plan;
  const oblique = pattern2.kind === "crossing" && (pattern2.angle ?? 90) !== 90;
  return [
    { level: "assumption", text: "the rows run along x of the laminate" },
    ...plan.holeWidth === void 0 && summary.needleDiameter !== void 0 ? [
      {
        level: "assumption",
        text: "the hole of the needle is taken to close around the thread before the cure, to a pocket 1 to 1.5 times as wide as the thread in it; where it stays open, the width left along a row is the worst case"
      }
    ] : [],
    ...cloths.length === 0 ? [] : [
      {
        level: "assumption",
        text: `cloth (${cloths.join(", ")}) is wavy already, so that the same hole adds less than is reckoned here for straight fibres`
      }
    ],
    ...oblique ? [
      {
        level: "assumption",
        text: "the second set of rows, which crosses at a slant, is counted as if it crossed at right angles"
      }
    ] : []
  ];
}

// packages/core/src/design/results/stitch-price-data.ts
function priceData({ missing: missing5, along: along2, across: across2, common, notes: notes4, sources }) {
  return {
    missing: missing5,
    along: along2 === void 0 ? null : fibresData(along2),
    across: across2 === void 0 ? null : fibresData(across2),
    ...common === void 0 ? {} : commonData(common),
    notes: notes4,
    sources
  };
}
var fibresData = ({ layer, material: material2, angle: angle2, spacing: spacing2, found }) => ({
  layer,
  material: material2,
  angle: angle2,
  spacing: spacing2,
  affectedWidth: found.affectedWidth,
  modulusFactor: found.modulus,
  compressionFactor: found.compression,
  tensionFactor: found.tension
});
var commonData = ({
  perforation,
  crowding,
  published
}) => ({
  perforationFactor: perforation,
  crowdingFactor: crowding,
  published
});

// packages/core/src/design/results/stitching.ts
function stitchingResults({ stitching, laminates, source }) {
  const problems = [];
  const results = stitching.flatMap((model) => {
    const laminate2 = laminates.find(({ name }) => name === model.laminate);
    try {
      return placed(["stitching", model.name], () => [
        { model, holding: stitchHolding(model, laminate2), price: stitchPrice(model, laminate2) }
      ]);
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      problems.push(...error.problems);
      return [];
    }
  });
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(source.text)));
  return results;
}
var stitchingNotes = ({ model, holding, price }) => uniqueNotes([...model.summary.notes, ...holding.notes, ...holding.growthNotes, ...price.notes]);
var stitchingSources = (result) => uniqueSources(
  result.model.summary.sources,
  result.holding.sources,
  result.price.sources,
  stitchingNotes(result).flatMap(({ source }) => source ?? [])
);
var summaryData = ({ title, laminate: laminate2, plan, summary }) => ({
  ...defined({ title, laminate: laminate2 }),
  stitchType: plan.type,
  pattern: plan.pattern,
  dryThickness: plan.dryThickness,
  ...withoutProvenance(summary)
});
var stitchingData = ({ model, holding, price }) => ({
  ...summaryData(model),
  bridging: holdingData(holding),
  inPlane: priceData(price),
  notes: model.summary.notes,
  sources: model.summary.sources
});

// packages/core/src/design/results/quantities.ts
var byName = {
  thickness: "length",
  addedThickness: "length",
  dryThickness: "length",
  zToolSide: "length",
  zBagSide: "length",
  gap: "length",
  arealMass: "arealMass",
  fibreArealMass: "arealMass",
  resinArealMass: "arealMass",
  addedArealMass: "arealMass",
  threadMassPerArea: "arealMass",
  density: "density",
  fibreVolumeFraction: "fraction",
  fibreVolumeFractionNeeded: "fraction",
  voidFraction: "fraction",
  resinMassFraction: "fraction",
  warpShare: "fraction",
  warpSurplusLength: "fraction",
  weftSurplusLength: "fraction",
  warpAngle: "angle",
  weftAngle: "angle",
  fibreModulusNeeded: "modulus",
  alpha1: "expansion",
  alpha2: "expansion",
  E1: "modulus",
  E2: "modulus",
  G12: "modulus",
  S: "stress",
  Yc: "stress",
  Yt: "stress",
  Xc: "stress",
  Xt: "stress",
  G23: "modulus",
  G13: "modulus",
  Ex: "modulus",
  Ey: "modulus",
  Gxy: "modulus",
  A: "forcePerLength",
  B: "couplingStiffness",
  D: "bendingStiffness",
  H: "forcePerLength",
  sums: "forcePerLength",
  shear: "forcePerLength",
  coreThickness: "length",
  faceDistance: "length",
  wrinklingDepth: "length",
  z: "length",
  coreModulus: "modulus",
  coreShearModulusXz: "modulus",
  coreShearModulusYz: "modulus",
  faceModulus: "modulus",
  coreShearStrength: "stress",
  wrinklingStress: "stress",
  wrinklingStressInTheory: "stress",
  wrinklingStressDeepCore: "stress",
  faceStress: "stress",
  nominal: "stress",
  tauXz: "stress",
  tauYz: "stress",
  shearStiffness: "forcePerLength",
  bendingStiffness: "bendingStiffness",
  N: "forcePerLength",
  M: "momentPerLength",
  strain: "strain",
  curvature: "curvature",
  stress: "stress",
  stress12: "stress",
  strain12: "strain",
  mechanicalStrain12: "strain",
  principal: "curvature",
  direction: "angle",
  riseOfThickness: "length",
  stiffnessShare: "fraction",
  remainingStiffness: "fraction",
  collapse: "fraction",
  temperatureChange: "temperatureChange",
  temperatureGradient: "temperatureGradient",
  moisture: "fraction",
  angle: "angle",
  frequency: "frequency",
  frequencyThin: "frequency",
  Nx: "forcePerLength",
  Ny: "forcePerLength",
  criticalN: "forcePerLength",
  criticalStrain: "strain",
  growthStrain: "strain",
  onsetTension: "strain",
  onsetCompression: "strain",
  G: "toughness",
  perSquare: "toughness",
  toughness: "toughness",
  edgeMoment: "momentPerLength",
  angles: "angle",
  modulus: "modulus",
  partedModulus: "modulus",
  penetrationDensity: "perArea",
  holeDensity: "perArea",
  arealFraction: "fraction",
  arealFractionAbove: "fraction",
  arealFractionBelow: "fraction",
  bundleArealFraction: "fraction",
  netWidth: "fraction",
  threadLengthPerArea: "lengthPerArea",
  threadLengthPerRowLength: "lengthPerLength",
  threadLengthPerStitch: "length",
  threadMassPerRowLength: "massPerLength",
  rowLengthPerArea: "lengthPerArea",
  threadDiameter: "length",
  underThreadDiameter: "length",
  bundleDiameter: "length",
  needleDiameter: "length",
  holeWidth: "length",
  meanRun: "length",
  nearestNeighbour: "length",
  sewingTime: "time",
  peakForce: "force",
  crackLength: "length",
  displacement: "length",
  splitLength: "length",
  naturalLength: "length",
  armStrain: "strain",
  steady: "toughness",
  specimen: "toughness",
  ceiling: "toughness",
  byLoad: "toughness",
  byArea: "toughness",
  growth: "length",
  pointOfNoReturn: "perArea",
  crackDepth: "length",
  openingAtPeak: "length",
  work: "energy",
  toughnessAdded: "toughness",
  bridgingLength: "length",
  rowDistance: "length",
  bandWidth: "length",
  spacing: "length"
};
var within3 = (group2, members, kind2) => Object.fromEntries(members.map((member) => [`${group2}.${member}`, kind2]));
var interval2 = (group2, kind2) => within3(group2, ["median", "low", "high"], kind2);
var byNames = {
  "expansion.thermal.strain": "expansion",
  "expansion.thermal.curvature": "curvatureExpansion",
  "expansion.moisture.strain": "number",
  "panel.length": "length",
  "panel.width": "length",
  "panel.compression": "forcePerLength",
  "panel.pressure": "pressure",
  "panel.deflection": "length",
  "panel.deflectionThin": "length",
  "blister.length": "length",
  "blister.width": "length",
  "onset.load": "force",
  "verdict.load": "force",
  "states.load": "force",
  "events.load": "force",
  "law.opening": "length",
  "law.force": "force",
  "peak.opening": "length",
  "peak.force": "force",
  "rows.position": "length",
  "test.variation": "fraction",
  ...within3("zone", ["computed", "low", "high", "needed"], "length"),
  ...within3("shares", ["bond", "threadAtCrack", "threadAtAnchor", "threadPullOut", "arm"], "fraction"),
  ...interval2("peakForceInterval", "force"),
  ...interval2("openingAtPeakInterval", "length"),
  ...interval2("workInterval", "energy"),
  ...interval2("toughnessAddedInterval", "toughness"),
  ...within3("curve", ["opening"], "length"),
  ...within3("curve", ["force"], "force"),
  ...interval2("splitLengthInterval", "length"),
  ...interval2("toughness.interval", "toughness"),
  ...interval2("steadyInterval", "toughness"),
  ...interval2("steady", "toughness"),
  ...interval2("specimen", "toughness")
};
var pureNumbers2 = /* @__PURE__ */ new Set([
  "laminationParameters",
  "measures",
  "departure",
  "relativeSpread",
  "xi",
  "elasticity"
]);
function kindAt(path) {
  if (path.some((part) => pureNumbers2.has(part))) return "number";
  const names4 = path.filter((part) => !/^\d+$/.test(part));
  const last = (count) => names4.slice(-count).join(".");
  return byNames[last(3)] ?? byNames[last(2)] ?? byName[last(1)] ?? "number";
}

// packages/core/src/design/results/targets.ts
function follow2(data, parts2) {
  let value = data;
  for (const [i, part] of parts2.entries()) {
    if (typeof value !== "object" || value === null) return { at: i, names: [] };
    if (!Object.hasOwn(value, part)) return { at: i, names: Object.keys(value) };
    value = value[part];
  }
  if (typeof value === "number") return { value, at: parts2.length, names: [] };
  if (value === null) return { at: parts2.length, names: [], none: true };
  return { at: parts2.length, names: typeof value === "object" && value !== null ? Object.keys(value) : [] };
}
function limit4(given, kind2, path, problems) {
  const parsed2 = parseQuantity(given, kind2, path);
  if (parsed2.ok) return parsed2.value;
  problems.push(parsed2.problem);
  return void 0;
}
function quantityAt(data, quantity2) {
  const parts2 = quantity2.split(".");
  const found = follow2(data, parts2);
  if (found.value === void 0) throw new SelvageError([missing4(quantity2, found)]);
  return { value: found.value, kind: kindAt(parts2) };
}
function missing4(quantity2, found) {
  const parts2 = quantity2.split(".");
  if (found.none) {
    return {
      code: "unknown-name",
      message: `\`${quantity2}\` has no value in this design`,
      allowed: "a quantity that is not null in the JSON report",
      hint: "nothing sets it a limit here (a face in tension, a load that stresses nothing), or a value that it needs is not given; the report of this part says which"
    };
  }
  const wrong = parts2[found.at];
  if (found.at === 3 && parts2[0] === "loads" && parts2[2] === "failure" && found.names.length === 0) {
    return {
      code: "unknown-name",
      message: `the report has no \`${quantity2}\`: a layer of the laminate has no strengths`,
      allowed: "a laminate whose layers, cores aside, all have Xt, Xc, Yt, Yc and S"
    };
  }
  const allowed = found.names.length === 0 ? "the path of a number in the JSON report" : `${found.at === 0 ? "a path begins with" : `after \`${parts2.slice(0, found.at).join(".")}\``}: ${found.names.slice(0, 30).join(", ")}`;
  return {
    code: "unknown-name",
    message: wrong === void 0 ? `\`${quantity2}\` is not a number` : `the report has no \`${quantity2}\``,
    allowed,
    ...wrong === void 0 ? {} : nearestHint(wrong, found.names)
  };
}
function judgeTargets(targets, data, { source }) {
  const problems = [];
  const results = targets.flatMap((target, i) => targetResult(target, i, data, problems) ?? []);
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(source.text)));
  return results;
}
function targetResult(target, index, data, problems) {
  const path = ["targets", index];
  const parts2 = target.quantity.split(".");
  const found = follow2(data, parts2);
  if (found.value === void 0) {
    problems.push({ ...missing4(target.quantity, found), path: [...path, "quantity"] });
    return void 0;
  }
  const given = [target.atLeast, target.atMost, target.within].filter((one) => one !== void 0);
  if (given.length === 0 || target.within !== void 0 && given.length > 1) {
    problems.push({
      code: "contradiction",
      message: `target ${index + 1} needs its limits once`,
      allowed: "`atLeast`, `atMost`, both, or `within: [lower, upper]`",
      path
    });
    return void 0;
  }
  const kind2 = kindAt(parts2);
  const [lowText, highText] = target.within ?? [target.atLeast, target.atMost];
  const key = target.within === void 0 ? void 0 : "within";
  const before2 = problems.length;
  const atLeast = lowText === void 0 ? void 0 : limit4(lowText, kind2, key ? [...path, key, 0] : [...path, "atLeast"], problems);
  const atMost = highText === void 0 ? void 0 : limit4(highText, kind2, key ? [...path, key, 1] : [...path, "atMost"], problems);
  if (problems.length > before2) return void 0;
  if (atLeast !== void 0 && atMost !== void 0 && atLeast > atMost) {
    problems.push({
      code: "contradiction",
      message: `the lower limit of target ${index + 1} is above the upper one`,
      path
    });
    return void 0;
  }
  return judge(
    {
      quantity: target.quantity,
      kind: kind2,
      value: found.value,
      hard: target.priority !== "soft",
      ...target.note === void 0 ? {} : { note: target.note }
    },
    atLeast,
    atMost
  );
}
function judge(target, atLeast, atMost) {
  const margins = [
    ...atLeast === void 0 ? [] : [{ margin: target.value - atLeast, limit: atLeast }],
    ...atMost === void 0 ? [] : [{ margin: atMost - target.value, limit: atMost }]
  ].sort((a, b) => a.margin - b.margin);
  const nearest2 = margins[0] ?? { margin: 0, limit: 0 };
  return {
    ...target,
    ...atLeast === void 0 ? {} : { atLeast },
    ...atMost === void 0 ? {} : { atMost },
    met: nearest2.margin >= 0,
    margin: nearest2.margin,
    ...nearest2.limit === 0 ? {} : { relativeMargin: nearest2.margin / Math.abs(nearest2.limit) }
  };
}

// packages/core/src/design/results/index.ts
function compute(model) {
  const materials = materialResults(model);
  const laminates = model.laminates.map((one) => laminateResult(one, model));
  const byName2 = new Map(model.laminates.map((laminate2) => [laminate2.name, laminate2]));
  const loads = model.loads.flatMap((load) => {
    const laminate2 = byName2.get(load.laminate);
    return laminate2 === void 0 ? [] : [loadResult(load, laminate2, model.source)];
  });
  const stitching = stitchingResults(model);
  const coupons = couponResults(model);
  const sources = uniqueSources(
    ...laminates.map((one) => one.sources),
    ...stitching.map(stitchingSources),
    ...loads.map(loadSources),
    ...coupons.map(couponSources),
    ...materials.map((one) => one.sources),
    ...model.provenance.map((one) => one.sources)
  );
  const data = {
    format: 1,
    title: model.title,
    materials: Object.fromEntries(materials.map((one) => [one.name, materialData(one)])),
    laminates: Object.fromEntries(laminates.map((one) => [one.model.name, laminateData(one)])),
    stitching: Object.fromEntries(stitching.map((one) => [one.model.name, stitchingData(one)])),
    blade: null,
    loads: Object.fromEntries(loads.map((one) => [one.model.name, loadData2(one)])),
    coupons: Object.fromEntries(coupons.map((one) => [one.model.name, couponData(one)]))
  };
  const targets = judgeTargets(model.targets, data, model);
  return {
    model,
    materials,
    laminates,
    stitching,
    loads,
    coupons,
    targets,
    sources,
    data: { ...data, targets, sources: sources.map((key) => ({ key, ...bibliography[key] })) }
  };
}

// packages/core/src/design/results/numbers-at.ts
var checks = ["freeEdge", "panel", "blister"];
var holdings = /* @__PURE__ */ new Set(["bridging", "inPlane"]);
function numbersAt(model, paths) {
  const split = paths.map((path) => path.split("."));
  const wanted = (section2) => {
    const found = /* @__PURE__ */ new Map();
    for (const [first2, name = "", key = ""] of split) {
      if (first2 === section2) found.set(name, (found.get(name) ?? /* @__PURE__ */ new Set()).add(key));
    }
    return found;
  };
  const entries = (section2, models, data) => {
    const names4 = wanted(section2);
    return Object.fromEntries(
      models.flatMap((one) => {
        const keys = names4.get(one.name);
        return keys === void 0 ? [] : [[one.name, data(one, keys)]];
      })
    );
  };
  return {
    materials: wanted("materials").size === 0 ? {} : materialsData(model),
    laminates: entries("laminates", model.laminates, (one, keys) => {
      const bare = { ...one };
      for (const check4 of checks) if (!keys.has(check4)) delete bare[check4];
      return laminateData(laminateResult(bare, model));
    }),
    stitching: entries("stitching", model.stitching, (one, keys) => planData(model, one, keys)),
    loads: entries("loads", model.loads, (load) => {
      const laminate2 = model.laminates.find(({ name }) => name === load.laminate);
      return laminate2 && loadData2(loadResult(load, laminate2, model.source));
    }),
    coupons: couponsData(model, wanted("coupons"))
  };
}
var materialsData = (model) => Object.fromEntries(materialResults(model).map((one) => [one.name, materialData(one)]));
function planData(model, plan, keys) {
  if (![...keys].some((key) => holdings.has(key))) return summaryData(plan);
  const [found] = stitchingResults({ ...model, stitching: [plan] });
  return found && stitchingData(found);
}
function couponsData(model, names4) {
  if (names4.size === 0) return {};
  const coupons = model.coupons.filter(({ name, test }) => names4.has(name) || test !== void 0);
  return Object.fromEntries(
    couponResults({ coupons, source: model.source }).map((one) => [one.model.name, couponData(one)])
  );
}

// packages/core/src/study/evaluate.ts
function evaluateDesign(design, { quantities, targets = false }) {
  const model = assemble2(design);
  const judged = targets ? model.targets : [];
  const data = numbersAt(model, [...quantities, ...judged.map(({ quantity: quantity2 }) => quantity2)]);
  return {
    values: quantities.map((quantity2) => numberOf(model, data, quantity2)),
    targets: judgeTargets(judged, data, model)
  };
}
function numberOf(model, data, quantity2) {
  try {
    return quantityAt(data, quantity2).value;
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return quantityAt(compute(model).data, quantity2).value;
  }
}
function evaluateVariant(inputs, changes, wanted) {
  try {
    return evaluateDesign(variant(inputs, changes), wanted);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { problems: error.problems };
  }
}

// packages/core/src/study/method/check.ts
function demandWhole(name, value, low, high) {
  if (!(Number.isSafeInteger(value) && value >= low && value <= high)) {
    const allowed = `a whole number, ${low} to ${high}`;
    fail({ code: "out-of-range", message: `${name} is ${value}, must be ${allowed}`, allowed });
  }
}
function demandFiniteResults(what, values) {
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(values[i])) {
      fail({
        code: "not-computable",
        message: `${what} ${i + 1} of ${values.length} is ${values[i]}, not a finite number`
      });
    }
  }
}

// packages/core/src/study/method/enumeration.ts
var mostChoices = 2 ** 31 - 1;
function demandCounts(counts) {
  demandWhole("the number of genes", counts.length, 1, 1e5);
  counts.forEach((count, gene) => {
    demandWhole(`the number of choices of gene ${gene + 1}`, count, 1, mostChoices);
  });
}
function spaceSize(counts) {
  demandCounts(counts);
  return counts.reduce((product2, count) => product2 * BigInt(count), 1n);
}
function countableSize(counts, most5 = Number.MAX_SAFE_INTEGER) {
  const size4 = spaceSize(counts);
  if (size4 > BigInt(most5)) {
    fail({
      code: "too-large",
      message: `there are ${size4} combinations`,
      allowed: `at most ${most5}`,
      hint: "leave out choices, or search instead of going through all"
    });
  }
  return Number(size4);
}
function genomeAt(counts, index) {
  return genomesFrom(counts, index, 1);
}
function genomesFrom(counts, from, count) {
  const size4 = countableSize(counts);
  demandWhole("the number of the genome", from, 0, size4 - 1);
  demandWhole("the number of genomes", count, 1, size4 - from);
  const genes = counts.length;
  const out = new Int32Array(count * genes);
  let rest = from;
  for (let g = genes - 1; g >= 0; g--) {
    const choices = counts[g] ?? 1;
    out[g] = rest % choices;
    rest = Math.floor(rest / choices);
  }
  for (let at4 = genes; at4 < out.length; at4 += genes) {
    out.copyWithin(at4, at4 - genes, at4);
    countUp(counts, out, at4);
  }
  return out;
}
function countUp(counts, genomes, at4) {
  for (let g = counts.length - 1; g >= 0; g--) {
    const next = (genomes[at4 + g] ?? 0) + 1;
    if (next < (counts[g] ?? 1)) {
      genomes[at4 + g] = next;
      return;
    }
    genomes[at4 + g] = 0;
  }
}

// packages/core/src/study/method/rows.ts
function compareRows(table4, width, i, j) {
  for (let p2 = i * width, q = j * width, end2 = p2 + width; p2 < end2; p2++, q++) {
    const [a, b] = [table4[p2] ?? 0, table4[q] ?? 0];
    if (a < b) return -1;
    if (a > b) return 1;
  }
  return 0;
}
function nowhereAbove(table4, width, i, j) {
  for (let p2 = i * width, q = j * width, end2 = p2 + width; p2 < end2; p2++, q++) {
    if ((table4[p2] ?? 0) > (table4[q] ?? 0)) return false;
  }
  return true;
}
var numbersBelow = (count) => Int32Array.from({ length: count }, (_, i) => i);

// packages/core/src/study/method/pareto-front.ts
function sweep(table4, width, order, equals) {
  const kept3 = [];
  const distinct2 = [];
  for (const row of order) {
    const last = distinct2.at(-1);
    if (last !== void 0 && compareRows(table4, width, last, row) === 0) {
      if (equals) kept3.push(row);
    } else if (last === void 0 || !dominated(table4, width, row, last, distinct2)) {
      kept3.push(row);
      distinct2.push(row);
    }
  }
  return Int32Array.from(kept3);
}
function dominated(table4, width, row, last, front) {
  if (width <= 2) return nowhereAbove(table4, width, last, row);
  for (const member of front) if (nowhereAbove(table4, width, member, row)) return true;
  return false;
}

// packages/core/src/study/method/pareto-archive.ts
function emptyArchive(genes, steps) {
  demandWhole("the number of genes", genes, 1, 1e5);
  demandWhole("the number of objectives", steps.length, 1, 20);
  for (const step4 of steps) {
    if (!(step4 >= 0 && Number.isFinite(step4))) {
      fail({ code: "out-of-range", message: `a step is ${step4}`, allowed: "a finite number, 0 or more" });
    }
  }
  return { genes, steps: [...steps], count: 0, genomes: [], objectives: [] };
}
function addToArchive(archive, genomes, objectives) {
  const { genes, steps } = archive;
  const width = steps.length;
  if (genomes.length % genes !== 0 || genomes.length / genes * width !== objectives.length) {
    fail({
      code: "contradiction",
      message: `${genomes.length} genes and ${objectives.length} objectives`,
      allowed: `${genes} genes and ${width} objectives per genome`
    });
  }
  demandFiniteResults("objective", objectives);
  const count = archive.count + genomes.length / genes;
  const allGenomes = joined(archive.genomes, genomes);
  const all = joined(archive.objectives, objectives);
  const boxes = all.map((value, i) => boxOf(value, steps[i % width] ?? 0));
  const order = numbersBelow(count);
  order.sort(
    (i, j) => compareRows(boxes, width, i, j) || compareRows(all, width, i, j) || compareRows(allGenomes, genes, i, j) || i - j
  );
  const kept3 = sweep(boxes, width, order, false);
  kept3.sort((i, j) => compareRows(all, width, i, j));
  const rows = (table4, size4) => Array.from(kept3).flatMap((i) => [...table4.subarray(i * size4, (i + 1) * size4)]);
  return { genes, steps, count: kept3.length, genomes: rows(allGenomes, genes), objectives: rows(all, width) };
}
var boxOf = (value, step4) => step4 > 0 ? Math.floor(value / step4) : value;
function joined(a, b) {
  const out = new Float64Array(a.length + b.length);
  out.set(a);
  out.set(b, a.length);
  return out.map((value) => value + 0);
}

// packages/core/src/study/search/stack-rules.ts
function stackBuilder(rules2, length2) {
  const { choices, touch, grouping, symmetric: symmetric3, outer, pairs, pair: pair2, sign: sign2 } = rules2;
  const stack = new Int32Array(length2);
  const run2 = new Int32Array(length2);
  const surplus = new Int32Array(pairs);
  let depth = 0;
  let unpaired = 0;
  const add = (choice3, by) => {
    const p2 = pair2[choice3];
    if (p2 < 0) return;
    const before2 = surplus[p2];
    const after = before2 + by * sign2[choice3];
    surplus[p2] = after;
    unpaired += Math.abs(after) - Math.abs(before2);
  };
  return {
    stack,
    depth: () => depth,
    fits(choice3) {
      const left4 = length2 - depth - 1;
      let alike5 = 1;
      if (depth === 0) {
        if (outer >= 0 && choice3 !== outer) return false;
      } else {
        const last = stack[depth - 1];
        if (touch[last * choices + choice3] === 0) return false;
        if (last === choice3) alike5 = run2[depth - 1] + 1;
      }
      if (grouping > 0 && (left4 === 0 && symmetric3 ? 2 * alike5 : alike5) > grouping) return false;
      const p2 = pair2[choice3];
      if (p2 < 0) return unpaired <= left4;
      const before2 = surplus[p2];
      return unpaired + Math.abs(before2 + sign2[choice3]) - Math.abs(before2) <= left4;
    },
    place(choice3) {
      run2[depth] = depth > 0 && stack[depth - 1] === choice3 ? run2[depth - 1] + 1 : 1;
      stack[depth] = choice3;
      depth++;
      add(choice3, 1);
    },
    lift() {
      depth--;
      add(stack[depth], -1);
    }
  };
}
function nextStack({ choices }, builder) {
  const { stack, depth, fits, place, lift } = builder;
  let choice3 = 0;
  const back = () => {
    if (depth() === 0) return false;
    lift();
    choice3 = stack[depth()] + 1;
    return true;
  };
  if (depth() === stack.length && !back()) return false;
  while (depth() < stack.length) {
    while (choice3 < choices && !fits(choice3)) choice3++;
    if (choice3 < choices) {
      place(choice3);
      choice3 = 0;
    } else if (!back()) return false;
  }
  return true;
}
var mostTrials = 2e4;
function repairedStack({ choices }, builder, wanted) {
  const { stack, depth, fits, place, lift } = builder;
  while (depth() > 0) lift();
  const tried = new Int32Array(stack.length + 1);
  for (let trials = 0; trials < mostTrials; trials++) {
    const at4 = depth();
    if (at4 === stack.length) return true;
    if (tried[at4] === choices) {
      if (at4 === 0) return false;
      tried[at4] = 0;
      lift();
      continue;
    }
    const choice3 = ((wanted[at4] ?? 0) + tried[at4]) % choices;
    tried[at4] = tried[at4] + 1;
    if (fits(choice3)) place(choice3);
  }
  return false;
}

// packages/core/src/study/search/genomes.ts
function candidatesFrom({ varied, space, layout: layout2 }, from) {
  const { genes, inputs, length: lengthGene, plies: firstPly } = layout2;
  const counts = varied.map(({ values: values2 }) => values2.length);
  const inputsAt = (index) => counts.length === 0 ? new Int32Array(0) : genomeAt(counts, index);
  if (space === void 0) {
    let index = from;
    return (into, count) => {
      for (let k = 0; k < count; k++) into.set(inputsAt(index++), k * genes);
    };
  }
  const { rules: rules2, counter } = space;
  const stacks = Number(counter?.all.stacks ?? 0n);
  const each2 = counter?.each.map((one) => Number(one.stacks)) ?? [];
  const builders = rules2.lengths.map((length3) => stackBuilder(rules2, length3));
  let combination = Math.floor(from / stacks);
  let values = inputsAt(combination);
  let length2 = 0;
  let rest = from % stacks;
  while (rest >= (each2[length2] ?? Number.POSITIVE_INFINITY)) {
    rest -= each2[length2] ?? 0;
    length2++;
  }
  let builder = builders[length2];
  counter?.goTo(builder, rest);
  let ready = true;
  const advance = () => {
    while (!nextStack(rules2, builder)) {
      length2++;
      if (length2 === builders.length) {
        length2 = 0;
        combination++;
        values = inputsAt(combination);
      }
      builder = builders[length2];
    }
  };
  return (into, count) => {
    for (let k = 0; k < count; k++) {
      if (ready) ready = false;
      else advance();
      const at4 = k * genes;
      for (let i = 0; i < inputs; i++) into[at4 + i] = values[i];
      if (lengthGene >= 0) into[at4 + lengthGene] = length2;
      const { stack } = builder;
      const ply3 = at4 + firstPly;
      for (let i = 0; i < stack.length; i++) into[ply3 + i] = stack[i];
      into.fill(0, ply3 + stack.length, at4 + genes);
    }
  };
}

// packages/core/src/study/search/goals.ts
function limitOf(given, kind2, path) {
  if (given === void 0) return void 0;
  const parsed2 = parseQuantity(given, kind2, path);
  return parsed2.ok ? parsed2.value : fail(parsed2.problem);
}
function goalsOf({ design }, search4) {
  const quantities = [];
  const places = [];
  const indexOf = (path, place) => {
    const known = quantities.indexOf(path);
    if (known >= 0) return known;
    places.push(place);
    return quantities.push(path) - 1;
  };
  const aims2 = ["minimise", "maximise"].flatMap(
    (key) => (search4[key] ?? []).map((path, i) => {
      const sense = key === "minimise" ? 1 : -1;
      return { path, kind: kindAt(path.split(".")), sense, quantity: indexOf(path, ["search", key, i]) };
    })
  );
  if (aims2.length === 0) {
    fail({
      code: "missing-key",
      message: "the search has no aim",
      allowed: "`minimise` or `maximise` with a list of quantities, or both",
      path: ["search"],
      atKey: true
    });
  }
  const twice = aims2.find((aim, i) => aims2.findIndex(({ path }) => path === aim.path) < i);
  if (twice !== void 0) {
    fail({
      code: "contradiction",
      message: `\`${twice.path}\` is an aim twice`,
      allowed: "each quantity once, to be made small or large",
      path: places[twice.quantity] ?? ["search"]
    });
  }
  const limit5 = (path, ends2, at4, of) => {
    const kind2 = kindAt(path.split("."));
    const [atLeast, atMost] = [limitOf(ends2[0], kind2, at4.low), limitOf(ends2[1], kind2, at4.high)];
    if (atLeast === void 0 && atMost === void 0) {
      fail({
        code: "missing-key",
        message: `\`${path}\` has no limit`,
        allowed: "`atLeast`, `atMost` or both",
        path: at4.entry
      });
    }
    if (atLeast !== void 0 && atMost !== void 0 && atLeast > atMost) {
      fail({ code: "contradiction", message: `the lower limit of \`${path}\` is above the upper one`, path: at4.entry });
    }
    return {
      path,
      kind: kind2,
      ...atLeast === void 0 ? {} : { atLeast },
      ...atMost === void 0 ? {} : { atMost },
      of,
      quantity: indexOf(path, [...at4.entry, "quantity"])
    };
  };
  const own2 = (search4.constraints ?? []).map(({ quantity: quantity2, atLeast, atMost }, i) => {
    const entry2 = ["search", "constraints", i];
    return limit5(
      quantity2,
      [atLeast, atMost],
      { entry: entry2, low: [...entry2, "atLeast"], high: [...entry2, "atMost"] },
      "search"
    );
  });
  const targets = search4.targets === false ? [] : design.targets ?? [];
  const hard = targets.flatMap((target, i) => {
    if (target.priority === "soft") return [];
    const entry2 = ["targets", i];
    if (target.within !== void 0 && (target.atLeast !== void 0 || target.atMost !== void 0)) {
      fail({
        code: "contradiction",
        message: `target ${i + 1} needs its limits once`,
        allowed: "`atLeast`, `atMost`, both, or `within: [lower, upper]`",
        path: entry2
      });
    }
    const places2 = target.within === void 0 ? { entry: entry2, low: [...entry2, "atLeast"], high: [...entry2, "atMost"] } : { entry: entry2, low: [...entry2, "within", 0], high: [...entry2, "within", 1] };
    return [limit5(target.quantity, target.within ?? [target.atLeast, target.atMost], places2, "target")];
  });
  return { aims: aims2, limits: [...own2, ...hard], quantities, places };
}
var notComputed = 1e9;
function rounded2(x) {
  const c = x * 8193;
  const high = c - (c - x);
  return Number.isFinite(high) ? high : x;
}
function judge2({ aims: aims2, limits: limits2, quantities }, count, values, computed, objectives, violations) {
  const width = quantities.length;
  for (let k = 0; k < count; k++) {
    const row = k * width;
    if (computed[k] === 0) {
      objectives.fill(0, k * aims2.length, (k + 1) * aims2.length);
      violations[k] = notComputed;
      continue;
    }
    for (let i = 0; i < aims2.length; i++) {
      const aim = aims2[i];
      objectives[k * aims2.length + i] = rounded2(aim.sense * values[row + aim.quantity]) + 0;
    }
    let missed = 0;
    for (let i = 0; i < limits2.length; i++) {
      const limit5 = limits2[i];
      const value = values[row + limit5.quantity];
      if (limit5.atLeast !== void 0 && value < limit5.atLeast)
        missed += (limit5.atLeast - value) / sizeOf2(limit5.atLeast);
      if (limit5.atMost !== void 0 && value > limit5.atMost) missed += (value - limit5.atMost) / sizeOf2(limit5.atMost);
    }
    violations[k] = Math.min(missed, notComputed);
  }
}
var sizeOf2 = (limit5) => limit5 === 0 ? 1 : Math.abs(limit5);

// packages/core/src/study/search/leaders.ts
var noLeaders = (genes, width, most5) => ({
  ...emptyArchive(genes, new Array(width).fill(0)),
  most: most5
});
function addLeaders(leaders, genomes, objectives) {
  if (genomes.length === 0) return leaders;
  const { genes, steps, most: most5 } = leaders;
  if (steps.length > 1) return { ...addToArchive(leaders, genomes, objectives), most: most5 };
  const allGenomes = [...leaders.genomes, ...Array.from(genomes)];
  const all = [...leaders.objectives, ...Array.from(objectives, (value) => value + 0)];
  const order = all.map((_, i) => i);
  order.sort((i, j) => compareRows(all, 1, i, j) || compareRows(allGenomes, genes, i, j));
  const kept3 = order.filter((i, k) => k === 0 || compareRows(allGenomes, genes, order[k - 1] ?? 0, i) !== 0);
  kept3.length = Math.min(most5, kept3.length);
  return {
    genes,
    steps,
    most: most5,
    count: kept3.length,
    genomes: kept3.flatMap((i) => allGenomes.slice(i * genes, (i + 1) * genes)),
    objectives: kept3.map((i) => all[i] ?? 0)
  };
}
function notAfter(a, i, b, j, width) {
  for (let k = 0; k < width; k++) {
    const [x, y] = [a[i * width + k], b[j * width + k]];
    if (x !== y) return x < y;
  }
  return true;
}
function isBeaten(leaders, genomes, objectives, k) {
  const { count, steps, most: most5, genes, objectives: front } = leaders;
  const width = steps.length;
  if (width === 1) {
    if (count < most5) return false;
    const [last, own2] = [front[count - 1], objectives[k]];
    return own2 > last || own2 === last && notAfter(leaders.genomes, count - 1, genomes, k, genes);
  }
  for (let i = 0; i < count; i++) {
    let [above, equal] = [false, true];
    for (let j = 0; j < width; j++) {
      const [other, own2] = [front[i * width + j], objectives[k * width + j]];
      if (other > own2) {
        above = true;
        break;
      }
      if (other < own2) equal = false;
    }
    if (!above && (!equal || notAfter(leaders.genomes, i, genomes, k, genes))) return true;
  }
  return false;
}
function closer(a, b) {
  if (a === void 0 || b === void 0) return a ?? b;
  if (a.violation !== b.violation) return a.violation < b.violation ? a : b;
  return notAfter(a.genome, 0, b.genome, 0, a.genome.length) ? a : b;
}

// packages/core/src/study/search/blocks.ts
var portion = 1024;
function bench({ goals, layout: layout2 }, count) {
  return {
    genomes: new Int32Array(count * layout2.genes),
    values: new Float64Array(count * goals.quantities.length),
    computed: new Uint8Array(count),
    objectives: new Float64Array(count * goals.aims.length),
    violations: new Float64Array(count)
  };
}
var emptyTally = ({ layout: layout2, goals, keep: keep2 }) => ({
  evaluated: 0,
  failed: 0,
  missed: 0,
  leaders: noLeaders(layout2.genes, goals.aims.length, keep2)
});
var mostOffered = 64;
function tallied(before2, count, genomes, { objectives, violations, reason }) {
  const { genes, steps } = before2.leaders;
  const width = steps.length;
  let { leaders, failed, missed, closest } = before2;
  let offered = [];
  const add = () => {
    const rows = (table4, size4) => offered.flatMap((k) => [...table4.subarray(k * size4, (k + 1) * size4)]);
    leaders = addLeaders(leaders, rows(genomes, genes), rows(objectives, width));
    offered = [];
  };
  for (let k = 0; k < count; k++) {
    const violation = violations[k];
    if (violation === 0) {
      if (isBeaten(leaders, genomes, objectives, k)) continue;
      offered.push(k);
      if (offered.length === mostOffered) add();
    } else if (violation >= notComputed) failed++;
    else {
      missed++;
      if (closest === void 0 || violation <= closest.violation) {
        const here = { violation, genome: Array.from(genomes.subarray(k * genes, (k + 1) * genes)) };
        closest = closer(closest, here);
      }
    }
  }
  add();
  const why = before2.reason ?? reason;
  return {
    evaluated: before2.evaluated + count,
    failed,
    missed,
    leaders,
    ...closest === void 0 ? {} : { closest },
    ...why === void 0 ? {} : { reason: why }
  };
}
function evaluateRange(problem, { from, to }) {
  const { evaluator, goals } = problem;
  const space = bench(problem, Math.min(portion, to - from));
  const next = candidatesFrom(problem, from);
  let tally = emptyTally(problem);
  for (let at4 = from; at4 < to; at4 += portion) {
    const count = Math.min(portion, to - at4);
    next(space.genomes, count);
    const reason = evaluator.evaluate(space.genomes, count, space.values, space.computed);
    judge2(goals, count, space.values, space.computed, space.objectives, space.violations);
    tally = tallied(tally, count, space.genomes, { ...space, ...reason === void 0 ? {} : { reason } });
  }
  return tally;
}

// packages/core/src/study/amount.ts
var pattern = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/;
function amountOf(value) {
  if (typeof value === "number") return { number: value, unit: "" };
  if (typeof value !== "string") return void 0;
  const [, number7, unit2 = ""] = pattern.exec(value) ?? [];
  if (number7 === void 0 || unit2 !== "" && parseUnit(unit2) === void 0) return void 0;
  return { number: Number(number7), unit: unit2 };
}
function numberIn(amount2, unit2) {
  if (amount2.unit === unit2) return amount2.number;
  const [from, to] = [parseUnit(amount2.unit || "1"), parseUnit(unit2 || "1")];
  if (from === void 0 || to === void 0 || from.dimension !== to.dimension) return void 0;
  return amount2.number * from.factor / to.factor;
}

// packages/core/src/study/search/design-path.ts
var mostRemembered = 2e4;
function designEvaluator(inputs, genes, changesOf2, quantities) {
  const remembered2 = /* @__PURE__ */ new Map();
  const evaluated = (genome) => {
    const key = genome.join();
    const before2 = remembered2.get(key);
    if (before2 !== void 0) return before2;
    const found = evaluateVariant(inputs, changesOf2(genome), { quantities });
    if (remembered2.size < mostRemembered) remembered2.set(key, found);
    return found;
  };
  return {
    path: "design",
    evaluate(genomes, count, values, computed) {
      let reason;
      for (let k = 0; k < count; k++) {
        const found = evaluated(genomes.subarray(k * genes, (k + 1) * genes));
        computed[k] = "values" in found ? 1 : 0;
        if ("values" in found) values.set(found.values, k * quantities.length);
        else reason ??= found.problems[0]?.message;
      }
      return reason;
    }
  };
}

// packages/core/src/study/search/kernel-outputs.ts
var packed2 = [0, 1, 2, 1, 3, 4, 2, 4, 5];
var symmetric2 = { A: layout.A, B: layout.B, D: layout.D, a: layout.a, d: layout.d };
var constants2 = ["Ex", "Ey", "Gxy", "nuxy", "nuyx", "etaxyx", "etaxyy"];
var masses = ["arealMass", "fibreArealMass", "resinArealMass"];
function ofLaminate([name = "", second2 = "", third = "", ...rest]) {
  if (rest.length > 0) return void 0;
  const row = (offset) => ({ from: "row", offset });
  if (third === "") {
    if (name === "thickness" && second2 === "") return row(layout.thickness);
    if (name === "condition" && second2 === "") return row(layout.condition);
    const mass = masses.find((one) => one === name && second2 === "");
    if (mass !== void 0) return { from: "sum", mass };
    const place = constants2.indexOf(second2);
    return place >= 0 && (name === "inPlane" || name === "flexural") ? row(layout[name] + place) : void 0;
  }
  if (!/^[012]$/.test(second2) || !/^[012]$/.test(third)) return void 0;
  const entry2 = 3 * Number(second2) + Number(third);
  if (name === "b") return row(layout.b + entry2);
  const block2 = Object.hasOwn(symmetric2, name) ? symmetric2[name] : void 0;
  return block2 === void 0 ? void 0 : row(block2 + (packed2[entry2] ?? 0));
}
var isPlainLoad = ({ strain: strain2, curvature, temperatureGradient, moisture: moisture2 }) => strain2 === void 0 && curvature === void 0 && temperatureGradient === void 0 && moisture2 === void 0;
function kernelOutputs({ design }, loads, laminate2, quantities) {
  const outputs = quantities.map((path) => {
    const [section2, name = "", ...rest] = path.split(".");
    if (section2 === "laminates") {
      if (name === laminate2) return ofLaminate(rest);
      return Object.hasOwn(design.laminates, name) ? { from: "constant" } : void 0;
    }
    const load = section2 === "loads" ? loads.find((one) => one.name === name) : void 0;
    if (load === void 0) return void 0;
    if (load.laminate !== laminate2) return { from: "constant" };
    const [failure2, named4, ratio, ...more] = rest;
    const criterion = failureCriteria.find((one) => one === named4);
    const known = failure2 === "failure" && ratio === "ratio" && more.length === 0 && isPlainLoad(load);
    return known && criterion !== void 0 ? { from: "ratio", load: name, criterion } : void 0;
  });
  return outputs.every((one) => one !== void 0) ? outputs : void 0;
}
function massOf2(ply3, mass) {
  if (mass === "arealMass") return ply3.density === void 0 ? void 0 : ply3.density * ply3.thickness;
  const own2 = mass === "fibreArealMass" ? ply3.fibreArealMass : ply3.resinArealMass;
  return own2 ?? (ply3.core === true ? 0 : void 0);
}

// packages/core/src/study/search/choice-layers.ts
function choiceLayers(inputs, { laminate: laminate2 }, choices) {
  return choices.map(({ code, path }) => {
    try {
      const design = variant(inputs, [{ path: `laminates.${laminate2}.stack`, value: `[${code}]s` }]);
      const { material: material2, letters, stack, process: process2 } = design.laminates[laminate2] ?? { stack: "" };
      const bag = { kind: "bag", fibreVolumeFraction: 0.5 };
      const bare = {
        stack,
        ...material2 === void 0 ? {} : { material: material2 },
        ...letters === void 0 ? {} : { letters },
        ...process2 === void 0 ? {} : { process: process2.kind === "closedTool" ? bag : process2 }
      };
      const { format, title, materials, source } = design;
      const alone = { format, title, source, laminates: { [laminate2]: bare }, ...materials && { materials } };
      const plies2 = assemble2(alone).laminates[0]?.laminate.plies ?? [];
      const half = plies2.length / 2;
      return { plain: plies2.slice(0, half), mirrored: plies2.slice(half) };
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      throw new SelvageError(error.problems.map(({ where: _, ...problem }) => ({ ...problem, path })));
    }
  });
}
function coupling({ plain: plain6 }) {
  const { qbarTable, row } = tabulateQbar(plain6);
  let [q16, q26, size4] = [0, 0, 0];
  plain6.forEach(({ thickness }, k) => {
    const at4 = 6 * (row[k] ?? 0);
    q16 += thickness * (qbarTable[at4 + 2] ?? 0);
    q26 += thickness * (qbarTable[at4 + 4] ?? 0);
    size4 += thickness * ((qbarTable[at4] ?? 0) + (qbarTable[at4 + 3] ?? 0));
  });
  return [q16 / size4, q26 / size4];
}
var none2 = 1e-9;
var couples = (layers) => coupling(layers).some((share2) => Math.abs(share2) > none2);
var isCore = ({ plain: plain6 }) => plain6.every(({ core: core2 }) => core2 === true);

// packages/core/src/study/search/stack-choices.ts
var at2 = ["search", "stack"];
function listed3({ choices, materials, angles }, material2) {
  const ways = [choices, materials ?? angles].filter((one) => one !== void 0);
  if (ways.length !== 1 || materials !== void 0 && angles === void 0) {
    fail({
      code: ways.length > 1 ? "contradiction" : "missing-key",
      message: ways.length > 1 ? "the plies to choose from are given twice" : "the stack of the search does not say what its plies can be",
      allowed: "`choices`, or `angles`, or `materials` with `angles`",
      path: at2,
      atKey: true
    });
  }
  if (choices !== void 0) {
    return choices.map((one, i) => {
      const { angle: angle2, material: own2 } = typeof one === "number" ? { angle: one } : one;
      return { angle: angle2, material: own2 ?? material2, path: [...at2, "choices", i] };
    });
  }
  const names4 = materials?.map((name, i) => ({ name, path: [...at2, "materials", i] })) ?? [
    { name: material2, path: [...at2, "angles"] }
  ];
  return names4.flatMap(({ name, path }) => (angles ?? []).map((angle2) => ({ angle: angle2, material: name, path })));
}
function laminateOf({ design, data }, { laminate: laminate2 }) {
  const entry2 = Object.hasOwn(design.laminates, laminate2) ? design.laminates[laminate2] : void 0;
  if (entry2 === void 0) {
    return fail({
      code: "unknown-name",
      message: `there is no laminate \`${laminate2}\``,
      allowed: `laminates of this file: ${Object.keys(design.laminates).join(", ")}`,
      ...nearestHint(laminate2, Object.keys(design.laminates)),
      path: [...at2, "laminate"]
    });
  }
  const written = data.laminates[laminate2]?.stack;
  if (typeof written !== "string") {
    fail({
      code: "contradiction",
      message: `the stack of laminate \`${laminate2}\` is a list, and a search writes orientation codes`,
      allowed: 'an orientation code to begin with, such as "[0/90]s"',
      path: ["laminates", laminate2, "stack"]
    });
  }
  return entry2;
}
function stackChoices(inputs, entry2) {
  const laminate2 = laminateOf(inputs, entry2);
  const materials = Object.keys(inputs.design.materials ?? {});
  const found = /* @__PURE__ */ new Map();
  for (const { angle: angle2, material: material2, path } of listed3(entry2, laminate2.material)) {
    if (material2 === void 0) {
      return fail({
        code: "missing-key",
        message: "a ply of the search names no material",
        allowed: "{ angle, material }, or `material` of the laminate",
        path
      });
    }
    if (!materials.includes(material2)) {
      fail({
        code: "unknown-name",
        message: `there is no material \`${material2}\``,
        allowed: `materials of this file: ${materials.join(", ")}`,
        ...nearestHint(material2, materials),
        path
      });
    }
    const normal = fibreAngle(angle2);
    const key = `${material2} ${normal}`;
    const before2 = found.get(key);
    const code = before2?.code ?? codeOf(normal, material2, laminate2, path);
    found.set(
      key,
      before2 ? { ...before2, weight: before2.weight + 1 } : { material: material2, angle: normal, code, weight: 1, path }
    );
  }
  return [...found.values()];
}
function codeOf(angle2, material2, { material: own2, letters = {} }, path) {
  const letter = Object.keys(letters).find((one) => letters[one] === material2);
  const suffix = material2 === own2 ? "" : letter ?? material2;
  const code = `${angle2}${suffix}`;
  const [ply3, ...more] = parsed(`[${code}/0]`);
  const read2 = ply3?.material === void 0 ? own2 : letters[ply3.material] ?? ply3.material;
  if (ply3?.angle === angle2 && read2 === material2 && more.length === 1) return code;
  return fail({
    code: "contradiction",
    message: `\`${code}\` cannot stand for ${material2} at ${angle2} degrees in an orientation code`,
    allowed: "materials with a letter under `letters` of the laminate, angles with decimals in plain form",
    path
  });
}
function parsed(code) {
  try {
    return parseOrientationCode(code);
  } catch {
    return [];
  }
}
function outerChoice({ outer }, choices, material2) {
  if (outer === void 0) return -1;
  const wanted = { angle: fibreAngle(outer.angle), material: outer.material ?? material2 };
  const found = choices.findIndex((one) => one.angle === wanted.angle && one.material === wanted.material);
  if (found >= 0) return found;
  return fail({
    code: "unknown-name",
    message: `the outer ply, ${wanted.material ?? ""} at ${wanted.angle} degrees, is none of the choices`,
    allowed: choices.map(({ code }) => code).join(", "),
    path: [...at2, "outer"]
  });
}

// packages/core/src/study/search/stack-count.ts
var mostStates = 1e5;
function stackCounter(rules2) {
  const { choices, touch, grouping, symmetric: symmetric3, outer, pairs, pair: pair2, sign: sign2, weights, lengths } = rules2;
  const most5 = Math.max(...lengths);
  const runs = grouping > 0 ? Math.min(grouping, most5) : 1;
  const spread3 = 2 * most5 + 1;
  if (spread3 ** pairs * (most5 + 1) * (choices + 1) * (runs + 1) > Number.MAX_SAFE_INTEGER) return void 0;
  const known = /* @__PURE__ */ new Map();
  const surplus = new Int32Array(pairs);
  let unpaired = 0;
  const after = (left4, last, run2) => {
    if (left4 === 0) {
      const closed = unpaired === 0 && !(symmetric3 && grouping > 0 && 2 * run2 > grouping);
      return closed ? { stacks: 1n, written: 1n } : { stacks: 0n, written: 0n };
    }
    let key = (left4 * (choices + 1) + last + 1) * (runs + 1) + run2;
    for (let p2 = 0; p2 < pairs; p2++) key = key * spread3 + surplus[p2] + most5;
    const before2 = known.get(key);
    if (before2 !== void 0) return before2;
    let [stacks, written] = [0n, 0n];
    for (let next = 0; next < choices; next++) {
      const found = step4(left4, last, run2, next);
      if (found === void 0) return void 0;
      stacks += found.stacks;
      written += weights[next] === 1 ? found.written : found.written * BigInt(weights[next]);
    }
    if (known.size >= mostStates) return void 0;
    const count = { stacks, written };
    known.set(key, count);
    return count;
  };
  const none3 = { stacks: 0n, written: 0n };
  const step4 = (left4, last, run2, next) => {
    if (last >= 0 ? touch[last * choices + next] === 0 : outer >= 0 && next !== outer) return none3;
    const alike5 = last === next ? run2 + 1 : 1;
    if (grouping > 0 && alike5 > grouping) return none3;
    const kept3 = grouping > 0 ? alike5 : 1;
    const p2 = pair2[next];
    if (p2 < 0) return unpaired > left4 - 1 ? none3 : after(left4 - 1, next, kept3);
    const old = surplus[p2];
    const change = Math.abs(old + sign2[next]) - Math.abs(old);
    if (unpaired + change > left4 - 1) return none3;
    surplus[p2] = old + sign2[next];
    unpaired += change;
    const found = after(left4 - 1, next, kept3);
    surplus[p2] = old;
    unpaired -= change;
    return found;
  };
  const each2 = [];
  for (const length2 of lengths) {
    const found = after(length2, -1, 0);
    if (found === void 0) return void 0;
    each2.push(found);
  }
  const sum5 = (of) => each2.reduce((total3, count) => total3 + of(count), 0n);
  return {
    each: each2,
    all: { stacks: sum5(({ stacks }) => stacks), written: sum5(({ written }) => written) },
    goTo(builder, index) {
      while (builder.depth() > 0) builder.lift();
      surplus.fill(0);
      unpaired = 0;
      let [rest, last, run2] = [BigInt(index), -1, 0];
      for (let left4 = builder.stack.length; left4 > 0; left4--) {
        for (let next = 0; next < choices; next++) {
          const { stacks } = step4(left4, last, run2, next) ?? none3;
          if (rest >= stacks) {
            rest -= stacks;
            continue;
          }
          builder.place(next);
          run2 = grouping > 0 && last === next ? run2 + 1 : 1;
          last = next;
          const p2 = pair2[next];
          if (p2 >= 0) {
            unpaired += Math.abs(surplus[p2] + sign2[next]) - Math.abs(surplus[p2]);
            surplus[p2] = surplus[p2] + sign2[next];
          }
          break;
        }
      }
    }
  };
}

// packages/core/src/study/search/stack-space.ts
var at3 = ["search", "stack"];
function wholeAt(value, name, path) {
  if (Number.isInteger(value)) return value;
  return fail({
    code: "out-of-range",
    message: `${name} = ${value} is not a whole number`,
    allowed: "a whole number",
    path
  });
}
function pairsOf(choices, layers) {
  const pair2 = new Int32Array(choices.length).fill(-1);
  const sign2 = new Int32Array(choices.length).fill(1);
  let pairs = 0;
  for (const [i, { material: material2, angle: angle2 }] of choices.entries()) {
    const own2 = layers[i];
    if (pair2[i] !== -1 || own2 === void 0 || !couples(own2)) continue;
    pair2[i] = pairs;
    const opposite2 = choices.findIndex((one) => one.material === material2 && one.angle === fibreAngle(-angle2));
    if (opposite2 > i) {
      pair2[opposite2] = pairs;
      sign2[opposite2] = -1;
    }
    pairs++;
  }
  return { pair: pair2, sign: sign2, pairs };
}
function touchOf(choices, layers, largest5) {
  const cores = layers.map(isCore);
  return Uint8Array.from({ length: choices.length ** 2 }, (_, k) => {
    const [i, j] = [Math.floor(k / choices.length), k % choices.length];
    const [a, b] = [choices[i], choices[j]];
    if (largest5 === void 0 || a === void 0 || b === void 0 || cores[i] || cores[j]) return 1;
    return Math.abs(fibreAngle(a.angle - b.angle)) <= largest5 ? 1 : 0;
  });
}
function stackSpace(inputs, entry2) {
  const choices = stackChoices(inputs, entry2);
  const layers = choiceLayers(inputs, entry2, choices);
  const { plies: plies2, symmetric: symmetric3 = false, balanced = false, grouping, angleJump } = entry2;
  const lengths = (Array.isArray(plies2) ? plies2 : [plies2]).map(
    (count, i) => wholeAt(count, "plies", Array.isArray(plies2) ? [...at3, "plies", i] : [...at3, "plies"])
  );
  const none3 = {
    pair: new Int32Array(choices.length).fill(-1),
    sign: new Int32Array(choices.length).fill(1),
    pairs: 0
  };
  const rules2 = {
    choices: choices.length,
    weights: choices.map(({ weight }) => weight),
    lengths: [...new Set(lengths)],
    symmetric: symmetric3,
    touch: touchOf(choices, layers, angleJump),
    grouping: grouping === void 0 ? 0 : wholeAt(grouping, "grouping", [...at3, "grouping"]),
    outer: outerChoice(entry2, choices, inputs.design.laminates[entry2.laminate]?.material),
    ...balanced ? pairsOf(choices, layers) : none3
  };
  const counter = stackCounter(rules2);
  if (counter?.all.stacks === 0n) {
    fail({
      code: "contradiction",
      message: "no stack keeps to all rules of the search",
      allowed: "rules that leave at least one stack",
      hint: "balanced needs the opposite of every angle and an even number of them; across the mid-plane of a symmetric stack the last ply meets itself, which is a group of two",
      path: at3,
      atKey: true
    });
  }
  return { laminate: entry2.laminate, choices, layers, rules: rules2, ...counter === void 0 ? {} : { counter } };
}
function stackCode({ choices, rules: rules2 }, plies2) {
  const written = Array.from(plies2, (choice3) => choices[choice3]?.code ?? "").join("/");
  return `[${written}]${rules2.symmetric ? "s" : ""}`;
}

// packages/core/src/study/search/kernel-path.ts
var mostLaminates = 1024;
var largestCondition2 = 1e14;
function layerTable(lists) {
  const layers = lists.flat();
  const first2 = new Int32Array(lists.length + 1);
  lists.forEach((list, c) => {
    first2[c + 1] = first2[c] + list.length;
  });
  return { layers, first: first2, thickness: Float64Array.from(layers, (ply3) => ply3.thickness) };
}
function strengthTable(layers, criterion, options) {
  const tables = layers.map((ply3) => makeStrengthTable([ply3], [ply3.angle], criterion, options));
  return {
    criterion,
    stress: Float64Array.from(tables.flatMap(({ stress }) => [...stress])),
    constants: tables.flatMap(({ constants: constants3 }) => constants3),
    expands: tables.every(({ expands }) => expands)
  };
}
var isJudgeable = (layers) => layers.every((ply3) => ply3.strengths !== void 0 || ply3.core === true) && layers.every((ply3) => ply3.strengths === void 0 || !isIsotropic(ply3));
function strengthRuns(inputs, outputs, layers) {
  const { loads } = assemble2(inputs.design);
  const runs = [];
  for (const output of outputs) {
    if (output.from !== "ratio") continue;
    const load = loads.find(({ name }) => name === output.load);
    if (load === void 0) continue;
    const options = strengthOptionsOf(load);
    const key = JSON.stringify([output.criterion, options]);
    const forces = [...load.N ?? [0, 0, 0], ...load.M ?? [0, 0, 0]].map((force) => force ?? 0);
    const change = load.temperatureChange ?? 0;
    const run2 = runs.find((one) => one.key === key);
    if (run2?.loads.includes(load.name)) continue;
    const all = [...run2?.strength.loads ?? [], ...forces];
    const changes = [...run2?.strength.temperatureChange ?? [], change];
    const strength = {
      table: run2?.strength.table ?? strengthTable(layers, output.criterion, options),
      loads: Float64Array.from(all),
      temperatureChange: Float64Array.from(changes)
    };
    if (run2 === void 0) runs.push({ key, loads: [load.name], strength });
    else {
      run2.loads.push(load.name);
      run2.strength = strength;
    }
  }
  return {
    runs: runs.map(({ loads: names4, strength: { temperatureChange, ...rest } }) => {
      const isHeated = temperatureChange?.some((change) => change !== 0) === true;
      const strength = isHeated ? { ...rest, temperatureChange } : rest;
      return { loads: names4, strength };
    }),
    runOf: (output) => {
      const load = loads.find(({ name }) => name === output.load);
      const key = JSON.stringify([output.criterion, load === void 0 ? {} : strengthOptionsOf(load)]);
      const run2 = runs.findIndex((one) => one.key === key);
      return { run: run2, load: runs[run2]?.loads.indexOf(output.load) ?? 0 };
    }
  };
}
function takesAll(inputs, space) {
  const { laminate: laminate2, rules: rules2 } = space;
  const path = `laminates.${laminate2}.stack`;
  const stacks = rules2.lengths.flatMap(
    (length2) => space.choices.map((_, choice3) => stackCode(space, new Array(length2).fill(choice3)))
  );
  return stacks.every((value) => !("problems" in evaluateVariant(inputs, [{ path, value }], { quantities: [] })));
}
function kernelEvaluator(inputs, space, { genes, length: lengthGene, plies: firstPly }, quantities) {
  const { design } = inputs;
  if (design.laminates[space.laminate]?.process?.kind === "closedTool") return void 0;
  const { loads } = assemble2(design);
  const outputs = kernelOutputs(inputs, loads, space.laminate, quantities);
  if (outputs === void 0 || !takesAll(inputs, space)) return void 0;
  const { choices, lengths, symmetric: symmetric3 } = space.rules;
  const lists = [...space.layers.map(({ plain: plain6 }) => plain6), ...space.layers.map(({ mirrored }) => mirrored)];
  const { layers, first: first2, thickness } = layerTable(lists);
  const judged = outputs.some(({ from }) => from === "ratio");
  if (judged && !isJudgeable(layers)) return void 0;
  const masses2 = outputs.map(
    (output) => output.from === "sum" ? layers.map((ply3) => massOf2(ply3, output.mass)) : void 0
  );
  if (masses2.some((list) => list?.includes(void 0))) return void 0;
  const sums = masses2.map((list) => list === void 0 ? void 0 : Float64Array.from(list));
  let found;
  try {
    found = strengthRuns(inputs, outputs, layers);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return void 0;
  }
  const steady = outputs.map(({ from }, i) => {
    if (from !== "constant") return 0;
    const one = evaluateVariant(inputs, [], { quantities: [quantities[i] ?? ""] });
    return "values" in one ? one.values[0] ?? Number.NaN : Number.NaN;
  });
  if (steady.some(Number.isNaN)) return void 0;
  const heated = found.runs.some(({ strength }) => strength.temperatureChange !== void 0 && !strength.table.expands);
  if (heated) return void 0;
  const thickest = lists.reduce((most5, list) => Math.max(most5, list.length), 0);
  const mostPlies2 = mostLaminates * Math.max(...lengths) * thickest * (symmetric3 ? 2 : 1);
  const qbarTable = Float64Array.from(layers.flatMap((ply3) => [...makeQbarTable([ply3], [ply3.angle])]));
  const runs = (found.runs.length > 0 ? found.runs : [void 0]).map(
    (run2) => allocateBatch(mostLaminates, mostPlies2, qbarTable, run2?.strength)
  );
  const shared = runs[0];
  const jobs = runs.map(({ batch, out }, i) => ({
    loads: found.runs[i]?.loads.length ?? 0,
    batch: { ...shared.batch, ...batch.strength === void 0 ? {} : { strength: batch.strength } },
    out
  }));
  const { plyOffsets, row, thickness: thick } = shared.batch;
  const places = outputs.map((output) => output.from === "ratio" ? found.runOf(output) : { run: 0, load: 0 });
  const fill = (genomes, from, count) => {
    let at4 = 0;
    const lay = (choice3) => {
      const end2 = first2[choice3 + 1];
      for (let layer = first2[choice3]; layer < end2; layer++) {
        row[at4] = layer;
        thick[at4] = thickness[layer];
        at4++;
      }
    };
    for (let k = 0; k < count; k++) {
      const start = (from + k) * genes;
      const n = lengths[lengthGene < 0 ? 0 : genomes[start + lengthGene]];
      const ply3 = start + firstPly;
      for (let i = 0; i < n; i++) lay(genomes[ply3 + i]);
      if (symmetric3) for (let i = n - 1; i >= 0; i--) lay(choices + genomes[ply3 + i]);
      plyOffsets[k + 1] = at4;
    }
  };
  const width = quantities.length;
  const read2 = (from, count, values, computed) => {
    const { values: rows, status } = shared.out;
    for (let k = 0; k < count; k++) {
      computed[from + k] = status[k] === 0 && rows[k * STRIDE + layout.condition] <= largestCondition2 ? 1 : 0;
    }
    for (let q = 0; q < width; q++) {
      const output = outputs[q];
      const { run: run2, load } = places[q];
      const { out, loads: count6 } = jobs[run2];
      const sum5 = sums[q];
      for (let k = 0; k < count; k++) {
        let value = steady[q];
        if (output.from === "row") value = rows[k * STRIDE + output.offset];
        else if (output.from === "ratio") value = out.ratio[k * count6 + load];
        else if (sum5 !== void 0) {
          for (let i = plyOffsets[k], end2 = plyOffsets[k + 1]; i < end2; i++) value += sum5[row[i]];
        }
        values[(from + k) * width + q] = value;
        if (!Number.isFinite(value)) computed[from + k] = 0;
      }
    }
  };
  return {
    path: "kernel",
    evaluate(genomes, count, values, computed) {
      for (let from = 0; from < count; from += mostLaminates) {
        const many = Math.min(mostLaminates, count - from);
        fill(genomes, from, many);
        for (const { batch, out } of jobs)
          evaluateBatch({ ...batch, plyOffsets: plyOffsets.subarray(0, many + 1) }, out);
        read2(from, many, values, computed);
      }
      return void 0;
    }
  };
}

// packages/core/src/study/search/problem.ts
var goneThrough = { kernel: 10000000n, design: 20000n };
var mostCandidates = 100000000000n;
var same3 = (a, b) => {
  if (a === b) return true;
  const [x, y] = [amountOf(a), amountOf(b)];
  return x !== void 0 && y !== void 0 && numberIn(x, y.unit) === y.number;
};
function placedAt(path, compute2) {
  try {
    return compute2();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const here = ({ code, message, allowed, hint }) => ({
      code,
      message,
      ...allowed === void 0 ? {} : { allowed },
      ...hint === void 0 ? {} : { hint },
      path
    });
    throw new SelvageError(error.problems.map(here));
  }
}
function variedInputs(inputs, { vary = {}, stack }) {
  return Object.entries(vary).map(([path, values]) => {
    const at4 = ["search", "vary", path];
    if (path.startsWith("search.") || stack && new RegExp(`^laminates\\.${stack.laminate}\\.stack(\\.|$)`).test(path)) {
      fail({
        code: "contradiction",
        message: `\`${path}\` cannot vary${path.startsWith("search.") ? "" : ": the search finds this stack"}`,
        allowed: "inputs of the design that nothing else of the search sets",
        path: at4,
        atKey: true
      });
    }
    for (const [i, value] of values.entries()) placedAt([...at4, i], () => variant(inputs, [{ path, value }]));
    const once = values.filter((value, i) => values.findIndex((other) => same3(other, value)) === i);
    return { path, values: once, written: values.length };
  });
}
function layoutOf(varied, space) {
  const inputs = varied.length;
  const counts = varied.map(({ values }) => values.length);
  if (space === void 0) return { genes: inputs, inputs, length: -1, plies: inputs, counts };
  const { lengths, choices } = space.rules;
  const length2 = lengths.length > 1 ? inputs : -1;
  if (length2 >= 0) counts.push(lengths.length);
  const plies2 = counts.length;
  counts.push(...new Array(Math.max(...lengths)).fill(choices));
  return { genes: counts.length, inputs, length: length2, plies: plies2, counts };
}
function sizeOf3(varied, space) {
  const written = varied.reduce((product2, one) => product2 * BigInt(one.written), 1n);
  const different = varied.length === 0 ? 1n : spaceSize(varied.map(({ values }) => values.length));
  if (space === void 0) return { combinations: written, candidates: different, duplicates: written - different };
  const { lengths, weights } = space.rules;
  const named4 = BigInt(weights.reduce((sum5, weight) => sum5 + weight, 0));
  const combinations = written * lengths.reduce((sum5, length2) => sum5 + named4 ** BigInt(length2), 0n);
  const count = space.counter?.all;
  if (count === void 0) return { combinations };
  const candidates = different * count.stacks;
  return { combinations, candidates, duplicates: written * count.written - candidates };
}
function pliesOf2({ layout: layout2, space }, genome) {
  const { lengths } = space?.rules ?? { lengths: [] };
  const length2 = lengths[layout2.length < 0 ? 0 : genome[layout2.length] ?? 0] ?? 0;
  return Array.from({ length: length2 }, (_, i) => genome[layout2.plies + i] ?? 0);
}
function changesOf({ varied, layout: layout2, space }, genome) {
  const changes = varied.map(({ path, values }, i) => ({ path, value: values[genome[i] ?? 0] ?? null }));
  if (space === void 0) return changes;
  const value = stackCode(space, pliesOf2({ layout: layout2, space }, genome));
  return [...changes, { path: `laminates.${space.laminate}.stack`, value }];
}
function demandQuantities(inputs, first2, { quantities, places }) {
  const problems = quantities.flatMap((quantity2, i) => {
    const found = evaluateVariant(inputs, first2, { quantities: [quantity2] });
    if ("values" in found) return [];
    const wrong = found.problems.filter(
      ({ code, where, message }) => code === "unknown-name" && where === void 0 && !message.includes("has no value")
    );
    return wrong.map((problem) => ({ ...problem, path: places[i] ?? ["search"] }));
  });
  if (problems.length > 0) throw new SelvageError(problems);
}
function searchProblem(inputs, options = {}) {
  try {
    return setUp(inputs, options);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.flatMap((problem) => problem.where === void 0 ? locateIn(inputs, [problem]) : [problem])
    );
  }
}
function setUp(inputs, { seed, path }) {
  const { search: search4 } = inputs.design;
  if (search4 === void 0) {
    return fail({
      code: "missing-key",
      message: "the design has no `search`",
      allowed: "what varies and what is wanted",
      path: []
    });
  }
  const varied = variedInputs(inputs, search4);
  const space = search4.stack === void 0 ? void 0 : stackSpace(inputs, search4.stack);
  if (varied.length === 0 && space === void 0) {
    fail({
      code: "missing-key",
      message: "nothing varies in the search",
      allowed: "`vary`, `stack` or both",
      path: ["search"],
      atKey: true
    });
  }
  const goals = goalsOf(inputs, search4);
  const { counts, ...layout2 } = layoutOf(varied, space);
  const parts2 = { varied, layout: layout2, ...space === void 0 ? {} : { space } };
  demandQuantities(inputs, changesOf(parts2, firstGenome(layout2, space)), goals);
  const kernel = path === "design" || varied.length > 0 || space === void 0 ? void 0 : kernelEvaluator(inputs, space, layout2, goals.quantities);
  const evaluator = kernel ?? designEvaluator(inputs, layout2.genes, (genome) => changesOf(parts2, genome), goals.quantities);
  const size4 = sizeOf3(varied, space);
  const number7 = (key, otherwise) => wholeAt(search4[key] ?? otherwise, key, ["search", key]);
  return {
    inputs,
    ...parts2,
    goals,
    counts,
    size: size4,
    evaluator,
    method: methodOf(search4, size4, evaluator.path),
    population: number7("population", 100),
    generations: number7("generations", 100),
    seed: seed ?? number7("seed", 1),
    keep: number7("keep", 20)
  };
}
function methodOf({ method }, { candidates }, path) {
  if (method === "nsga2") return method;
  if (method === void 0) return candidates !== void 0 && candidates <= goneThrough[path] ? "exhaustive" : "nsga2";
  if (candidates !== void 0 && candidates <= mostCandidates) return method;
  return fail({
    code: "too-large",
    message: candidates === void 0 ? "the candidates of the search cannot be counted, so they cannot be gone through" : `there are ${candidates} candidates to go through`,
    allowed: `at most ${mostCandidates}`,
    hint: "leave out choices, or search with `method: nsga2`",
    path: ["search", "method"]
  });
}
function firstGenome({ genes, plies: plies2 }, space) {
  const genome = new Int32Array(genes);
  if (space === void 0) return genome;
  const builder = stackBuilder(space.rules, space.rules.lengths[0] ?? 1);
  if (repairedStack(space.rules, builder, [])) genome.set(builder.stack, plies2);
  return genome;
}

// ../../tmp/s1/p.mts
var src = readFileSync("/work/main/packages/core/bench/search.ts", "utf8");
var text2 = /const text = `([\s\S]*?)`;/.exec(src)[1];
var p = searchProblem(designInputs(text2));
for (let i = 0; i < 60; i++) {
  const s = process.cpuUsage();
  evaluateRange(p, { from: i % 16 * 65536 + 1e5, to: i % 16 * 65536 + 165536 });
  const u = process.cpuUsage(s);
  console.log(((u.user + u.system) * 1e3 / 65536).toFixed(0));
}
