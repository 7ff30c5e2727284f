// What each code means, and a call that is refused with it. The calls are run when the pages are made.

export const CODES = {
  missing: {
    says: "A field was left out. Nothing is assumed for you: not a waste, not a shrinkage, not a unit.",
    maths: "dentsInParts({ parts: 13 })",
    stripes: "repeat({ sequence: napkin })",
  },
  "unknown-field": {
    says: "There is a field the function does not know, perhaps one misspelt. A field that is not read would be a number lost in silence.",
    maths: 'dentsInParts({ parts: 13, dentsInPart: 20, colour: "madder" })',
    stripes: "repeat({ sequence: napkin, times: 2, turns: 3 })",
  },
  "wrong-kind": {
    says: "Something of another kind stands where this kind is wanted: a mass for a length, a percentage added for one lost.",
    maths: "crimpFromTakeUp({ takeUp: percentAdded(20) })",
    stripes: 'sequence("24 natural, 40 indigo")',
  },
  "not-a-number": {
    says: "A number that is none, or text that is no number, was given to a unit or a count.",
    maths: 'inches("a hand")',
    stripes: "repeat({ sequence: napkin, times: NaN })",
  },
  "not-whole": {
    says: "Ends, dents, picks and pieces are whole. Half a dent is refused, not rounded: only you know which way.",
    maths: "dentsInParts({ parts: 2.5, dentsInPart: 20 })",
    stripes: 'sequence([{ colour: "madder", ends: 2.5 }])',
  },
  "out-of-range": {
    says: "The kind is right and the size cannot be: a cloth that loses all of its length, more threads wound than there are ends.",
    maths: "crimpFromTakeUp({ takeUp: percentLost(100) })",
    stripes: "windingList({ sequence: napkin, threads: 900, tieEvery: 20 })",
  },
  empty: {
    says: "A list has nothing in it.",
    maths: "pieceCost({ costs: [], pieces: 8 })",
    stripes: "sequence([])",
  },
  "copied-quantity": {
    says: "JSON and structuredClone leave only data: the unit is no longer attached. Read it back, naming the units it may be in.",
    maths: "crimpFromTakeUp({ takeUp: JSON.parse(JSON.stringify(percentLost(20))) })",
  },
  "unknown-word": {
    says: "The text is none of the words that may stand there; they are listed in `params.candidates`.",
    maths: 'agreedRegain({ convention: "EU 1007/2011", fibre: "nettle" })',
    stripes: 'fullSett({ sett: napkin, pivots: "both" })',
  },
  "unknown-unit": {
    says: "The text or the data names a unit that is none of those you allowed.",
    maths: 'lengthFrom("3 cubits", [yards, inches])',
  },
  unreadable: {
    says: "The text cannot be read whole. No part of it is ever dropped to make the rest fit.",
    maths: 'lengthFrom("about a yard", [yards, inches])',
    stripes: 'sequenceFromList({ text: "24 natural, [4 indigo", legend: { natural: 1, indigo: 2 } })',
  },
  ambiguous: {
    says: "The text has two readings. Both are named, and you choose.",
    maths: 'lengthFrom("1/2 3 in", [inches])',
  },
  operator: {
    says: "JavaScript's + and < would answer wrongly in silence for quantities, so they throw. Write sum, difference, compare.",
    maths: "inches(3) + inches(4)",
  },
  "no-answer": {
    says: "Each input may stand alone, but together they give no such thing.",
    maths: "partnerCount({ wanted: cottonCount(20), counts: [cottonCount(15)] })",
  },
  "unknown-letter": {
    says: "The order uses a colour the legend does not name.",
    stripes: 'sequenceFromList({ text: "24 natural, 4 woad", legend: { natural: "natural" } })',
  },
  "too-long": {
    says: "Text past its cap is refused before it is read, so that no text can hold up a program.",
    maths: 'lengthFrom("1 yd ".repeat(100), [yards])',
    stripes: 'sequenceFromList({ text: "1 natural,".repeat(1001), legend: { natural: 1 } })',
  },
  "does-not-fit": {
    says: "What is asked for cannot be had with these stripes: a chain shorter than its widest stripe.",
    stripes: 'chains({ sequence: napkin, most: 10, cutAt: "stripe edges" })',
  },
  "not-symmetrical": {
    says: "The sequence reads differently from the right, so it has no half to be written by.",
    stripes:
      'halfSett({ sett: sequence([{ colour: 1, ends: 3 }, { colour: 2, ends: 4 }, { colour: 3, ends: 5 }]), pivots: "full count" })',
  },
  "odd-pivot": {
    says: "A pivot with an odd number of ends cannot be halved.",
    stripes: 'halfSett({ sett: sequence([{ colour: 1, ends: 3 }, { colour: 2, ends: 4 }]), pivots: "half count" })',
  },
  "unsafe-text": {
    says: "Text that would go into a picture could do more than be shown: it is refused, not cleaned.",
    stripes:
      'stripesSvg({ sequence: sequence([{ colour: "a", ends: 4 }]), paints: new Map([["a", { fill: "url(x)", letter: "A", name: "a" }]]), height: 4, id: "x", title: "x", description: "x" })',
  },
};
