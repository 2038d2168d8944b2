/**
 * Why a text is not a quantity: a code for programs and a sentence for the person who typed it.
 */

/** `text` says what was read and what would be right; it never names a program's parts. */
export interface QuantityFault {
  readonly code: QuantityFaultCode;
  readonly text: string;
}

export type QuantityFaultCode =
  | 'malformed'
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'missing-unit'
  | 'not-a-count'
  | 'out-of-range'
  | 'too-many-digits'
  | 'unknown-class'
  | 'unknown-tool';

export function quantityFault(code: QuantityFaultCode, text: string): QuantityFault {
  return { code, text: withUnseenShown(text) };
}

/**
 * Control and other unseen characters by their number, such as `\u{202e}`: what somebody typed may
 * not turn round or spoil the line in which it is quoted.
 */
export function withUnseenShown(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (character) => {
    const number = character.codePointAt(0) ?? 0;
    return `\\u{${number.toString(16)}}`;
  });
}
