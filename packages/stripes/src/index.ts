export { attempt, type Reading, StripeError, type StripeErrorCode, type StripeFault } from "./refusal/stripe-error.js";
export { type ColourOfEndInput, colourOfEnd } from "./sequence/colour-of-end.js";
export { edges } from "./sequence/edges.js";
export { endsPerColour } from "./sequence/ends-per-colour.js";
export { everyEnd } from "./sequence/every-end.js";
export { type Pivots, type FullSettInput, fullSett } from "./sequence/full-sett.js";
export { type HalfSettInput, halfSett } from "./sequence/half-sett.js";
export { join } from "./sequence/join.js";
export { merge } from "./sequence/merge.js";
export { mirror } from "./sequence/mirror.js";
export { type MultiplyInput, multiply } from "./sequence/multiply.js";
export { noEnds } from "./sequence/no-ends.js";
export { pivot } from "./sequence/pivot.js";
export { type RecolourInput, recolour } from "./sequence/recolour.js";
export { type RepeatInput, repeat } from "./sequence/repeat.js";
export { reverse } from "./sequence/reverse.js";
export { type RotateInput, rotate } from "./sequence/rotate.js";
export { sequenceFromEnds } from "./sequence/sequence-from-ends.js";
export { type Stripe, type Sequence, sequence } from "./sequence/sequence.js";
export { type SliceInput, slice } from "./sequence/slice.js";
export { type ColourRowsInput, colourRows } from "./notation/colour-rows.js";
export {
  type ColourRow,
  type ColumnBracket,
  type SequenceFromColourRowsInput,
  sequenceFromColourRows,
} from "./notation/sequence-from-colour-rows.js";
export {
  type SequenceFromListInput,
  type SequenceFromNamesInput,
  type ListReading,
  sequenceFromList,
} from "./notation/sequence-from-list.js";
export { type SettFromThreadCountInput, type Sett, settFromThreadCount } from "./notation/sett-from-thread-count.js";
export { type ThreadCountInput, threadCount } from "./notation/thread-count.js";
export { type WrittenListInput, writtenList } from "./notation/written-list.js";
export { type ApportionmentInput, type Apportionment, apportionment } from "./fitting/apportionment.js";
export { type BalancedInput, type BalancedSequence, balanced } from "./fitting/balanced.js";
export { type FittedSidesInput, type FittedSides, fittedSides } from "./fitting/fitted-sides.js";
export { type ScaleInput, scale } from "./fitting/scale.js";
export {
  type Share,
  type SequenceFromSharesInput,
  type FittedSequence,
  sequenceFromShares,
} from "./fitting/sequence-from-shares.js";
export { type SnapInput, type MovedEdge, type SnappedSequence, snap } from "./fitting/snap.js";
export { type EvenSpreadInput, evenSpread } from "./orders/even-spread.js";
export { type FibonacciStripesInput, fibonacciStripes } from "./orders/fibonacci-stripes.js";
export { type GradedBlendInput, gradedBlend } from "./orders/graded-blend.js";
export { type ColourLimits, type RandomOrderInput, randomOrder } from "./orders/random-order.js";
export { type ChainsInput, type Chain, chains } from "./winding/chains.js";
export { type LayingListInput, type LaidChain, layingList } from "./winding/laying-list.js";
export { type WindingListInput, type WoundStripe, windingList } from "./winding/winding-list.js";
export { blindPairingChance } from "./pairs/blind-pairing-chance.js";
export { type Fraction } from "./pairs/fraction.js";
export { type GroupOutlookInput, type GroupOutlook, groupOutlook } from "./pairs/group-outlook.js";
export { type GroupPreviewInput, groupPreview } from "./pairs/group-preview.js";
export { type Lead } from "./pairs/lead.js";
export { type OddEndsChanceInput, oddEndsChance } from "./pairs/odd-ends-chance.js";
export { type PairOutlookInput, type PairOutlook, pairOutlook } from "./pairs/pair-outlook.js";
export { type PairPreviewInput, pairPreview } from "./pairs/pair-preview.js";
export {
  type CountDisagreementsInput,
  type CountDisagreement,
  countDisagreements,
} from "./comparing/count-disagreements.js";
export { type EditedInput, edited } from "./comparing/edited.js";
export { type TwoSequences, sameStripes } from "./comparing/same-stripes.js";
export { type Difference, firstDifference } from "./comparing/first-difference.js";
export { type LikenessInput, type Likeness, likeness } from "./comparing/likeness.js";
export { type ShortestEditInput, type EditStep, type Edit, shortestEdit } from "./comparing/shortest-edit.js";
export { type StripesInGroupInput, type StripeInGroup, stripesInGroup } from "./comparing/stripes-in-group.js";
export { type Paint } from "./picture/paint.js";
export { type StripesSvgInput, stripesSvg } from "./picture/stripes-svg.js";
export { hatchedSvg } from "./picture/hatched-svg.js";
export { letteredSvg } from "./picture/lettered-svg.js";
export { type TextStripInput, textStrip } from "./picture/text-strip.js";
export type { Legend } from "./notation/legend.js";
export { type ColourDifferenceInput, colourDifference } from "./colour/colour-difference.js";
export { type LabColour, labOf } from "./colour/lab-of.js";
