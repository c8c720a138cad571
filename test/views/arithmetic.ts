/**
 * Works out the working's operations from their own text, with intervals: a number written with decimals may
 * be off by half of its last digit, unless a smaller error is known for it; a whole number or a constant is exact. Knows + − × ÷ ^ ( ) √ π and
 * round, up, down, min, max. Shares nothing with what wrote the text.
 */
export type Interval = readonly [number, number];

const hull = (values: number[]): Interval => [Math.min(...values), Math.max(...values)];
const combine = (a: Interval, b: Interval, f: (x: number, y: number) => number): Interval =>
  hull(a.flatMap((x) => b.map((y) => f(x, y))));
const apply = (a: Interval, f: (x: number) => number): Interval => hull(a.map(f));

/** The interval that a printed number stands for. */
export function printed(text: string, known?: number): Interval {
  const plain = text.replaceAll(',', '').replace('−', '-');
  const value = Number(plain);
  if (plain.trim() === '' || !Number.isFinite(value)) throw new Error(`not a number: '${text}'`);
  const decimals = plain.split('.')[1]?.length ?? 0;
  const half = Math.min(decimals === 0 ? 0 : 0.5 * 10 ** -decimals, known ?? 1);
  return [value - half, value + half];
}

const TOKEN = /\s*(\d[\d,]*(?:\.\d+)?(?!\d)|[a-z]+|[+−×÷^()√π,])/uy;

function tokens(text: string): string[] {
  const found: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const at = TOKEN.lastIndex;
    const match = TOKEN.exec(text);
    if (!match?.[1]) throw new Error(`cannot read '${text.slice(at)}' in '${text}'`);
    // A comma that does not group thousands separates arguments.
    const number = /^\d/.test(match[1])
      ? match[1].match(/^\d{1,3}(?:,\d{3})+(?:\.\d+)?|^\d+(?:\.\d+)?/u)?.[0]
      : match[1];
    found.push(number ?? '');
    TOKEN.lastIndex = at + match[0].length - match[1].length + (number?.length ?? 0);
  }
  return found;
}

const CALLS: Record<string, (args: Interval[]) => Interval> = {
  round: ([a = [NaN, NaN]]) => apply(a, (x) => Math.round(x)),
  up: ([a = [NaN, NaN]]) => apply(a, (x) => Math.ceil(x)),
  down: ([a = [NaN, NaN]]) => apply(a, (x) => Math.floor(x)),
  min: (args) => [Math.min(...args.map((a) => a[0])), Math.min(...args.map((a) => a[1]))],
  max: (args) => [Math.max(...args.map((a) => a[0])), Math.max(...args.map((a) => a[1]))],
};

/** Errors known for some of an operation's numbers, by their text. */
export type Known = ReadonlyMap<string, number>;

/** Evaluates an operation. */
export function evaluate(text: string, known: Known = new Map()): Interval {
  const rest = tokens(text);
  const take = (wanted?: string): string => {
    const token = rest.shift();
    if (token === undefined || (wanted !== undefined && token !== wanted))
      throw new Error(`'${text}' at '${token}'`);
    return token;
  };
  const sum = (): Interval => {
    let value = product();
    while (rest[0] === '+' || rest[0] === '−') {
      const plus = take() === '+';
      value = combine(value, product(), (x, y) => (plus ? x + y : x - y));
    }
    return value;
  };
  const product = (): Interval => {
    let value = power();
    while (rest[0] === '×' || rest[0] === '÷') {
      const times = take() === '×';
      value = combine(value, power(), (x, y) => (times ? x * y : x / y));
    }
    return value;
  };
  const power = (): Interval => {
    const value = atom();
    if (rest[0] !== '^') return value;
    take();
    return combine(value, atom(), (x, y) => x ** y);
  };
  const bracketed = (): Interval[] => {
    take('(');
    const args = [sum()];
    while (rest[0] === ',') {
      take();
      args.push(sum());
    }
    take(')');
    return args;
  };
  const atom = (): Interval => {
    const token = rest[0] ?? '';
    if (token === '(') return bracketed()[0] ?? [NaN, NaN];
    take();
    if (token === 'π') return [Math.PI, Math.PI];
    if (token === '√') return apply(bracketed()[0] ?? [NaN, NaN], Math.sqrt);
    const call = CALLS[token];
    if (call) return call(bracketed());
    return printed(token, known.get(token));
  };
  const value = sum();
  if (rest.length > 0) throw new Error(`left over in '${text}': ${rest.join(' ')}`);
  return value;
}

/** Whether a printed result agrees with what its operation can mean. */
export function agrees(
  operation: string,
  outputText: string,
  known: Known = new Map(),
  outputError = 0,
): boolean {
  const [low, high] = evaluate(operation, known);
  const [from, to] = printed(outputText);
  const noise = outputError + 1e-9 * Math.max(1, Math.abs(high));
  return low <= to + noise && from <= high + noise;
}
