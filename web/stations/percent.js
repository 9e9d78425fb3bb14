// A share lost in the wash is stored as "0.03" and said as 3 %: the point is moved in the text, nothing is computed.

// "3" is "0.03", "12.5" is "0.125", "0.5" is "0.005".
export function shareOf(percent) {
  const [whole, part = ''] = percent.split('.');
  const digits = whole.padStart(3, '0');
  const point = digits.length - 2;
  const share = `${digits.slice(0, point)}.${digits.slice(point)}${part}`.replace(/^0+(?=\d)/, '');
  return share.replace(/\.?0+$/, '') || '0';
}

// "0.03" is "3". A share written in another way ("3 %", "3/100") is shown as it stands, without its sign.
export function percentOf(share) {
  const match = /^(\d*)[.,](\d+)$/.exec(share);
  if (!match) return share.replace(/ ?%$/, '');
  const digits = match[2].padEnd(2, '0');
  const whole = `${match[1]}${digits.slice(0, 2)}`.replace(/^0+(?=\d)/, '');
  const part = digits.slice(2).replace(/0+$/, '');
  return part ? `${whole}.${part}` : whole;
}
