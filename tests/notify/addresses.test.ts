/**
 * Which addresses may be sent to, by the special-purpose registries of IANA for IPv4 and IPv6: the
 * first and the last of each block that is not globally reachable, and what lies beside it.
 */

import { describe, expect, test } from 'vitest';
import { isPublicAddress } from '../../src/notify/addresses.js';

/** As the registries have them: [block, first, last, those beside it that anybody can reach]. */
const IPV4: readonly (readonly [string, string, string, readonly string[]])[] = [
  ['0.0.0.0/8 This network', '0.0.0.0', '0.255.255.255', ['1.0.0.0']],
  ['10.0.0.0/8 Private-Use', '10.0.0.0', '10.255.255.255', ['9.255.255.255', '11.0.0.0']],
  ['100.64.0.0/10 Shared', '100.64.0.0', '100.127.255.255', ['100.63.255.255', '100.128.0.0']],
  ['127.0.0.0/8 Loopback', '127.0.0.0', '127.255.255.255', ['126.255.255.255', '128.0.0.0']],
  [
    '169.254.0.0/16 Link Local',
    '169.254.0.0',
    '169.254.255.255',
    ['169.253.255.255', '169.255.0.0'],
  ],
  ['172.16.0.0/12 Private-Use', '172.16.0.0', '172.31.255.255', ['172.15.255.255', '172.32.0.0']],
  [
    '192.0.0.0/24 IETF Protocol Assignments',
    '192.0.0.0',
    '192.0.0.255',
    ['191.255.255.255', '192.0.1.0'],
  ],
  ['192.0.2.0/24 TEST-NET-1', '192.0.2.0', '192.0.2.255', ['192.0.1.255', '192.0.3.0']],
  [
    '192.88.99.0/24 6to4 Relay Anycast',
    '192.88.99.0',
    '192.88.99.255',
    ['192.88.98.255', '192.88.100.0'],
  ],
  [
    '192.168.0.0/16 Private-Use',
    '192.168.0.0',
    '192.168.255.255',
    ['192.167.255.255', '192.169.0.0'],
  ],
  ['198.18.0.0/15 Benchmarking', '198.18.0.0', '198.19.255.255', ['198.17.255.255', '198.20.0.0']],
  [
    '198.51.100.0/24 TEST-NET-2',
    '198.51.100.0',
    '198.51.100.255',
    ['198.51.99.255', '198.51.101.0'],
  ],
  ['203.0.113.0/24 TEST-NET-3', '203.0.113.0', '203.0.113.255', ['203.0.112.255', '203.0.114.0']],
  ['224.0.0.0/4 Multicast', '224.0.0.0', '239.255.255.255', ['223.255.255.255']],
  ['240.0.0.0/4 Reserved', '240.0.0.0', '255.255.255.255', []],
];

const IPV6: readonly (readonly [string, string, string, readonly string[]])[] = [
  ['::1/128 Loopback, ::/128 Unspecified', '::', '::1', []],
  ['::/96 IPv4-compatible', '::2', '::ffff:ffff', []],
  ['::ffff:0:0/96 IPv4-mapped', '::ffff:0:0', '::ffff:255.255.255.255', []],
  ['64:ff9b:1::/48 local translation', '64:ff9b:1::', '64:ff9b:1:ffff:ffff:ffff:ffff:ffff', []],
  ['100::/64 Discard-Only', '100::', '100::ffff:ffff:ffff:ffff', []],
  ['100:0:0:1::/64 Dummy', '100:0:0:1::', '100:0:0:1:ffff:ffff:ffff:ffff', []],
  ['2001::/23 IETF, TEREDO', '2001::', '2001:1ff:ffff:ffff:ffff:ffff:ffff:ffff', ['2001:200::']],
  [
    '2001:db8::/32 Documentation',
    '2001:db8::',
    '2001:db8:ffff:ffff:ffff:ffff:ffff:ffff',
    ['2001:db7:ffff:ffff:ffff:ffff:ffff:ffff', '2001:db9::'],
  ],
  [
    '2002::/16 6to4',
    '2002::',
    '2002:ffff:ffff:ffff:ffff:ffff:ffff:ffff',
    ['2001:ffff:ffff:ffff:ffff:ffff:ffff:ffff', '2003::'],
  ],
  [
    '3fff::/20 Documentation',
    '3fff::',
    '3fff:fff:ffff:ffff:ffff:ffff:ffff:ffff',
    ['3ffe:ffff:ffff:ffff:ffff:ffff:ffff:ffff', '3fff:1000::'],
  ],
  ['5f00::/16 SRv6 SIDs', '5f00::', '5f00:ffff:ffff:ffff:ffff:ffff:ffff:ffff', []],
  ['fc00::/7 Unique-Local', 'fc00::', 'fdff:ffff:ffff:ffff:ffff:ffff:ffff:ffff', []],
  ['fe80::/10 Link-Local', 'fe80::', 'febf:ffff:ffff:ffff:ffff:ffff:ffff:ffff', []],
  ['fec0::/10 Site-Local', 'fec0::', 'feff:ffff:ffff:ffff:ffff:ffff:ffff:ffff', []],
  ['ff00::/8 Multicast', 'ff00::', 'ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff', []],
];

describe.each([...IPV4, ...IPV6])('%s', (_, first, last, beside) => {
  test('is forbidden from its first address to its last, and nothing beside it', () => {
    expect([first, last].map(isPublicAddress)).toEqual([false, false]);
    expect(beside.filter((address) => !isPublicAddress(address))).toEqual([]);
  });
});

test.each([
  ['metadata of clouds', ['169.254.169.254', 'fd00:ec2::254', '100.100.100.200', '192.0.0.192']],
  ['metadata at a public address', ['168.63.129.16']],
  ['IPv4 in IPv6, whatever it is', ['::ffff:127.0.0.1', '::ffff:7f00:1', '::ffff:11.0.0.0']],
  ['an address behind a translator', ['64:ff9b::127.0.0.1', '64:ff9b::10.1.2.3', '64:ff9b::a00:1']],
  ['what nobody has been given', ['4000::1', '1::1', '200::1', 'e000::1']],
  ['with a zone', ['fe80::1%eth0', '2003::1%1']],
])('%s is forbidden', (_, addresses) => {
  expect(addresses.filter(isPublicAddress)).toEqual([]);
});

test('what anybody can reach is not, behind a translator too', () => {
  const open = ['11.0.0.0', '168.63.129.17', '2003::1', '2a00::1', '64:ff9b::11.0.0.0'];
  expect(open.filter((address) => !isPublicAddress(address))).toEqual([]);
});
