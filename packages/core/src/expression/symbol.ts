/** Letters of the formulas that are Greek, by the names that identifiers have for them. */
const greek: Readonly<Record<string, readonly [text: string, tex: string]>> = {
  alpha: ['α', '\\alpha'],
  beta: ['β', '\\beta'],
  gamma: ['γ', '\\gamma'],
  delta: ['δ', '\\delta'],
  Delta: ['Δ', '\\Delta'],
  eps: ['ε', '\\varepsilon'],
  eta: ['η', '\\eta'],
  theta: ['θ', '\\theta'],
  kappa: ['κ', '\\kappa'],
  lambda: ['λ', '\\lambda'],
  mu: ['μ', '\\mu'],
  nu: ['ν', '\\nu'],
  xi: ['ξ', '\\xi'],
  pi: ['π', '\\pi'],
  rho: ['ρ', '\\rho'],
  sigma: ['σ', '\\sigma'],
  tau: ['τ', '\\tau'],
  phi: ['φ', '\\varphi'],
  chi: ['χ', '\\chi'],
  psi: ['ψ', '\\psi'],
  omega: ['ω', '\\omega'],
};

/** Identifiers that do not follow the rule of {@link symbolParts}. */
const irregular: Readonly<Record<string, readonly [base: string, subscript: string]>> = {
  DeltaT: ['ΔT', ''],
  nuxy: ['nu', 'xy'],
  nuyx: ['nu', 'yx'],
  nuxyb: ['nu', 'xy,b'],
  nuyxb: ['nu', 'yx,b'],
  etaxyx: ['eta', 'xy,x'],
  etaxyy: ['eta', 'xy,y'],
  etaxyxb: ['eta', 'xy,x,b'],
  etaxyyb: ['eta', 'xy,y,b'],
  Ex: ['E', 'x'],
  Ey: ['E', 'y'],
  Gxy: ['G', 'xy'],
  Exb: ['E', 'x,b'],
  Eyb: ['E', 'y,b'],
  Gxyb: ['G', 'xy,b'],
  Xt: ['X', 't'],
  Xc: ['X', 'c'],
  Yt: ['Y', 't'],
  Yc: ['Y', 'c'],
  F12star: ['F', '12*'],
};

interface SymbolParts {
  readonly base: string;
  readonly bar: boolean;
  /** `0` of the mid-plane. */
  readonly superscript: string;
  readonly subscript: string;
}

/** `Qbar11` is Q with a bar and the subscript 11, `eps0_x` is ε with a raised 0 and the subscript x, `E1` is E with the subscript 1. */
function symbolParts(identifier: string): SymbolParts {
  const known = irregular[identifier];
  if (known !== undefined) return { base: known[0], bar: false, superscript: '', subscript: known[1] };
  const [, head = identifier, tail = ''] = /^([A-Za-z]+?\d*)_(\w+)$/.exec(identifier) ?? [];
  const [, letters = head, digits = ''] = /^([A-Za-z]+)(\d*)$/.exec(head) ?? [];
  const bar = letters.endsWith('bar') && letters.length > 3;
  return {
    base: bar ? letters.slice(0, -3) : letters,
    bar,
    superscript: tail !== '' ? digits : '',
    subscript: tail !== '' ? tail.replaceAll('_', ',') : digits,
  };
}

const raised: Readonly<Record<string, string>> = { '0': '⁰', '1': '¹', '2': '²' };

/** A symbol as plain text: Q̄11, ε⁰x, ν12. */
export function symbolText(identifier: string): string {
  const { base, bar, superscript, subscript } = symbolParts(identifier);
  const letter = greek[base]?.[0] ?? base;
  const word = /^[a-z]{3}/.test(subscript);
  const joint = word || (/[A-Za-z]$/.test(letter) && letter.length > 1 && /^[a-z]/.test(subscript)) ? '_' : '';
  return `${letter}${bar ? '\u0304' : ''}${[...superscript].map((digit) => raised[digit] ?? digit).join('')}${joint}${subscript}`;
}

/** A symbol in LaTeX: \bar{Q}_{11}. */
export function symbolTex(identifier: string): string {
  const { base, bar, superscript, subscript } = symbolParts(identifier);
  const letter = base === 'ΔT' ? '\\Delta T' : (greek[base]?.[1] ?? (base.length > 1 ? `\\mathrm{${base}}` : base));
  const marked = bar ? `\\bar{${letter}}` : letter;
  const below = subscript === '' ? '' : `_{${/[a-z]{3,}/.test(subscript) ? `\\mathrm{${subscript}}` : subscript}}`;
  return `${marked}${superscript === '' ? '' : `^{${superscript}}`}${below}`;
}
