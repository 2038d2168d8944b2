/**
 * Which addresses a message may be sent to: those that anybody can reach. A receiver that somebody
 * named must not lead into the network that the program runs in, nor to the machine itself.
 *
 * Governed by the IANA IPv4 and IPv6 Special-Purpose Address Registries, in which these blocks are
 * not globally reachable, by RFC 5771 and RFC 4291 for multicast, and by RFC 4291 for IPv6, of
 * which 2000::/3 alone is given out.
 */

import { BlockList, isIPv6 } from 'node:net';

export interface Block {
  readonly block: string;
  /** As the registry has it. */
  readonly name: string;
  readonly from: string;
}

function block(text: string, name: string, from: string): Block {
  return { block: text, name, from };
}

export const FORBIDDEN_IPV4: readonly Block[] = [
  block('0.0.0.0/8', 'This network', 'RFC 791'),
  block('10.0.0.0/8', 'Private-Use', 'RFC 1918'),
  block('100.64.0.0/10', 'Shared Address Space', 'RFC 6598'),
  block('127.0.0.0/8', 'Loopback', 'RFC 1122'),
  block('168.63.129.16/32', 'Metadata of a cloud, at a public address', 'practice'),
  block('169.254.0.0/16', 'Link Local, and with it metadata of clouds', 'RFC 3927'),
  block('172.16.0.0/12', 'Private-Use', 'RFC 1918'),
  block('192.0.0.0/24', 'IETF Protocol Assignments', 'RFC 6890'),
  block('192.0.2.0/24', 'Documentation (TEST-NET-1)', 'RFC 5737'),
  block('192.88.99.0/24', 'Deprecated (6to4 Relay Anycast)', 'RFC 7526'),
  block('192.168.0.0/16', 'Private-Use', 'RFC 1918'),
  block('198.18.0.0/15', 'Benchmarking', 'RFC 2544'),
  block('198.51.100.0/24', 'Documentation (TEST-NET-2)', 'RFC 5737'),
  block('203.0.113.0/24', 'Documentation (TEST-NET-3)', 'RFC 5737'),
  block('224.0.0.0/4', 'Multicast', 'RFC 5771'),
  block('240.0.0.0/4', 'Reserved', 'RFC 1112'),
  block('255.255.255.255/32', 'Limited Broadcast', 'RFC 8190'),
];

/** Of those within 2000::/3, and of others that have a name of their own. */
export const FORBIDDEN_IPV6: readonly Block[] = [
  block('::/128', 'Unspecified Address', 'RFC 4291'),
  block('::1/128', 'Loopback Address', 'RFC 4291'),
  block('::/96', 'IPv4-compatible Address', 'RFC 4291'),
  block('::ffff:0:0/96', 'IPv4-mapped Address', 'RFC 4291'),
  block('64:ff9b:1::/48', 'IPv4-IPv6 Translation, local use', 'RFC 8215'),
  block('100::/64', 'Discard-Only Address Block', 'RFC 6666'),
  block('100:0:0:1::/64', 'Dummy IPv6 Prefix', 'RFC 9780'),
  block('2001::/23', 'IETF Protocol Assignments, TEREDO among them', 'RFC 2928'),
  block('2001:db8::/32', 'Documentation', 'RFC 3849'),
  block('2002::/16', '6to4', 'RFC 3056'),
  block('3fff::/20', 'Documentation', 'RFC 9637'),
  block('5f00::/16', 'Segment Routing (SRv6) SIDs', 'RFC 9602'),
  block('fc00::/7', 'Unique-Local, and with it metadata of clouds', 'RFC 4193'),
  block('fe80::/10', 'Link-Local Unicast', 'RFC 4291'),
  block('fec0::/10', 'Site-Local Unicast', 'RFC 3879'),
  block('ff00::/8', 'Multicast', 'RFC 4291'),
];

/** Of IPv6 nothing else is given out (RFC 4291, section 2.4, and the registry of IANA). */
const GIVEN_OUT = '2000::/3';

/** An IPv4 address behind a translator (RFC 6052): as good or bad as that address. */
const TRANSLATED = { prefix: '64:ff9b::', length: 96 } as const;

function listOf(blocks: readonly string[]): BlockList {
  const list = new BlockList();
  for (const text of blocks) {
    const [address = '', length = ''] = text.split('/');
    list.addSubnet(address, Number(length), isIPv6(address) ? 'ipv6' : 'ipv4');
  }
  return list;
}

const forbiddenIpv4 = listOf(FORBIDDEN_IPV4.map(({ block: text }) => text));
const forbiddenIpv6 = listOf([
  ...FORBIDDEN_IPV6.map(({ block: text }) => text),
  ...FORBIDDEN_IPV4.map(({ block: text }) => {
    const [address = '', length = ''] = text.split('/');
    return `${TRANSLATED.prefix}${address}/${TRANSLATED.length + Number(length)}`;
  }),
]);
const givenOut = listOf([GIVEN_OUT, `${TRANSLATED.prefix}/${TRANSLATED.length}`]);

/** Whether anybody can reach the address, which is one of IPv4 or of IPv6. */
export function isPublicAddress(address: string): boolean {
  if (!isIPv6(address)) return !forbiddenIpv4.check(address, 'ipv4');
  // A zone (RFC 4007) is of one machine alone.
  if (address.includes('%')) return false;
  return givenOut.check(address, 'ipv6') && !forbiddenIpv6.check(address, 'ipv6');
}
