/**
 * Names of articles: a part, or `part+work` for what a work has made of it.
 */

/** `hub+drill` was made from `hub`; the article itself comes first. */
export function madeFrom(article: string): string[] {
  const steps = article.split('+');
  return steps.map((_, index) => steps.slice(0, steps.length - index).join('+'));
}

export function isMadeFrom(article: string, part: string): boolean {
  return article.startsWith(`${part}+`);
}

/** The part without its works. */
export function partOf(article: string): string {
  return article.split('+')[0] ?? article;
}

/** What has been done to it, in order. */
export function worksOn(article: string): string[] {
  return article.split('+').slice(1);
}
