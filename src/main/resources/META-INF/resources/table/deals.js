// What a basket costs, by the same rules as the program's own price lists: the buyer pays the least
// that the list allows, found exactly (dynamic programming over the grades of a size and the jars that
// go into deals for any grade). Each line bears its exact share; cents cut off go to the lines that were
// cut most. Tested against POST /api/price-lists/{id}/quote.

/** More than the deals a basket can take, so that of equal ways the one with fewest deals is chosen. */
const DEALS = 8192;
const SINGLY = -1;

/** The least that 0, 1, 2, … jars cost, each taken singly or in one of some deals. */
function ladder(most, each, deals) {
  const cost = new Array(most + 1).fill(Infinity);
  const last = new Array(most + 1).fill(SINGLY);
  cost[0] = 0;
  const step = (jars, taken, price, how) => {
    if (taken <= jars && cost[jars - taken] + price < cost[jars]) {
      cost[jars] = cost[jars - taken] + price;
      last[jars] = how;
    }
  };
  for (let jars = 1; jars <= most; jars++) {
    if (each !== null) {
      step(jars, 1, each * DEALS, SINGLY);
    }
    deals.forEach((deal, n) => step(jars, deal.count, deal.coins * DEALS + 1, n));
  }
  return { cost, last, deals };
}

const coinsAt = (rungs, jars) => Math.floor(rungs.cost[jars] / DEALS);

function addUsed(rungs, jars, used) {
  const times = rungs.deals.map(() => 0);
  for (let left = jars; left > 0;) {
    if (rungs.last[left] === SINGLY) {
      left--;
    } else {
      times[rungs.last[left]]++;
      left -= rungs.deals[rungs.last[left]].count;
    }
  }
  rungs.deals.forEach((deal, n) => times[n] && used.push({ deal, times: times[n] }));
}

/** Lines of one size that cost the same and can take part in the same deals, the dearest first. */
function groupsOf(lines, deals) {
  const groups = new Map();
  lines.forEach((line, position) => {
    const own = deals.filter((deal) => deal.grade && deal.grade === line.grade);
    const key = line.each + ' ' + own.map((deal) => deals.indexOf(deal)).join(',');
    if (!groups.has(key)) {
      groups.set(key, { own, each: line.each, count: 0, members: [] });
    }
    const group = groups.get(key);
    group.count += line.count;
    group.members.push({ position, count: line.count });
  });
  return [...groups.values()].sort((a, b) => b.each - a.each);
}

/** How many of each group go into deals for any grade. */
function chooseMixed(groups, apart, mixed, jarsInAll) {
  let least = new Array(jarsInAll + 1).fill(Infinity);
  least[0] = 0;
  const choices = groups.map((group, i) => {
    const choice = new Array(jarsInAll + 1).fill(0);
    const after = new Array(jarsInAll + 1).fill(Infinity);
    for (let had = 0; had <= jarsInAll && least[had] < Infinity; had++) {
      for (let more = 0; more <= group.count && had + more <= jarsInAll; more++) {
        const cost = least[had] + apart[i].cost[group.count - more];
        const jars = had + more;
        if (cost < after[jars] || (cost === after[jars] && more < choice[jars])) {
          after[jars] = cost;
          choice[jars] = more;
        }
      }
    }
    least = after;
    return choice;
  });
  let best = 0;
  for (let jars = 1; jars <= jarsInAll; jars++) {
    if (least[jars] + mixed.cost[jars] < least[best] + mixed.cost[best]) {
      best = jars;
    }
  }
  const taken = groups.map(() => 0);
  for (let i = groups.length - 1; i >= 0; i--) {
    taken[i] = choices[i][best];
    best -= taken[i];
  }
  return taken;
}

/** Exact fractions cut to whole coins; what is left goes to the lines cut most, then the dearer, then the earlier. */
function shares(groups, apart, taken, mixedCoins, lines) {
  const singly = groups.reduce((sum, group, i) => sum + taken[i] * group.each, 0);
  const base = BigInt(Math.max(singly, 1));
  let left = mixedCoins;
  const parts = [];
  groups.forEach((group, i) => {
    const own = coinsAt(apart[i], group.count - taken[i]);
    left += own;
    const ofGroup = BigInt(own) * base + BigInt(mixedCoins) * BigInt(taken[i]) * BigInt(group.each);
    const denominator = BigInt(group.count) * base;
    for (const member of group.members) {
      const numerator = ofGroup * BigInt(member.count);
      parts.push({ position: member.position, numerator, denominator, each: group.each });
    }
  });
  const coins = new Array(lines).fill(0);
  for (const part of parts) {
    coins[part.position] = Number(part.numerator / part.denominator);
    left -= coins[part.position];
  }
  parts.sort((a, b) => {
    const here = (a.numerator % a.denominator) * b.denominator;
    const there = (b.numerator % b.denominator) * a.denominator;
    return here !== there ? (here > there ? -1 : 1) : b.each - a.each || a.position - b.position;
  });
  for (let n = 0; n < left; n++) {
    coins[parts[n].position]++;
  }
  return coins;
}

function dealSize(lines, deals, used) {
  const groups = groupsOf(lines, deals);
  const mixing = deals.filter((deal) => !deal.grade);
  const apart = groups.map((group) => ladder(group.count, group.each, group.own));
  const jarsInAll = mixing.length ? groups.reduce((sum, group) => sum + group.count, 0) : 0;
  const mixed = ladder(jarsInAll, null, mixing);
  const taken = chooseMixed(groups, apart, mixed, jarsInAll);
  const mixedJars = taken.reduce((sum, jars) => sum + jars, 0);
  groups.forEach((group, i) => addUsed(apart[i], group.count - taken[i], used));
  addUsed(mixed, mixedJars, used);
  return shares(groups, apart, taken, coinsAt(mixed, mixedJars), lines.length);
}

/** Percent as an exact fraction: [numerator, denominator]. */
function exact(percent) {
  const [whole, part = ''] = String(percent).split('.');
  return [BigInt(whole + part), 10n ** BigInt(part.length)];
}

function taxOf(coins, percent, included) {
  if (percent === null || percent === undefined) {
    return 0;
  }
  const [rate, unit] = exact(percent);
  const numerator = BigInt(coins) * rate;
  const denominator = included ? 100n * unit + rate : 100n * unit;
  return Number((2n * numerator + denominator) / (2n * denominator));
}

/**
 * @param lines {container, grade, count, each: coins, agreed: whether the price was given by hand, taxPercent}
 * @param deals {container, grade, count, coins}
 * @returns amounts by line, their sum without tax added, what deals saved, which deals, tax and what is to be paid
 */
export function reckon(lines, deals, taxIncluded) {
  const amounts = lines.map((line) => line.each * line.count);
  const singly = amounts.reduce((sum, amount) => sum + amount, 0);
  const used = [];
  const sizes = [...new Set(lines.filter((line) => !line.agreed && line.count > 0).map((line) => line.container))];
  for (const size of sizes) {
    const ofSize = deals.filter((deal) => deal.container === size);
    const indexes = lines.flatMap((line, n) => (line.container === size && !line.agreed && line.count > 0 ? [n] : []));
    if (ofSize.length) {
      dealSize(indexes.map((n) => lines[n]), ofSize, used).forEach((coins, n) => (amounts[indexes[n]] = coins));
    }
  }
  const sum = amounts.reduce((all, amount) => all + amount, 0);
  const taxes = lines.map((line, n) => taxOf(amounts[n], line.taxPercent, taxIncluded));
  const tax = taxes.reduce((all, one) => all + one, 0);
  return { amounts, sum, saved: singly - sum, used, tax, total: taxIncluded ? sum : sum + tax };
}
