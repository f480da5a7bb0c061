/**
 * Remembers the answers of a function of numbers, so that the same question is computed once. The memory belongs to the
 * returned function: make it where it is used and let it go with it.
 *
 * @example const square = memoize((x: number) => x * x); square(3) // => 9
 */
export function memoize<Result>(of: (...numbers: number[]) => Result): (...numbers: number[]) => Result {
  const answers = new Map<string, { readonly answer: Result }>();
  return (...numbers) => {
    const key = numbers.join(",");
    const known = answers.get(key);
    if (known) return known.answer;
    const answer = of(...numbers);
    answers.set(key, { answer });
    return answer;
  };
}
