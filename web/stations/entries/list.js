// Which entry sets which kind of field (the kinds are told at the head of words/controls.js).
import { ChoiceEntry, ClothEntry, CurrencyEntry, MotifEntry } from './choices.js';
import { LengthEntry, MeasureField, SignedEntry } from './lengths.js';
import { ClothsEntry, FlagEntry, NumberEntry, RateEntry } from './price.js';
import { OutlineEntry, SideEntry } from './outline.js';
import { CountEntry, DateEntry, MoneyEntry, PercentEntry, TextEntry } from './figures.js';

export const ENTRIES = {
  choice: ChoiceEntry, times: ChoiceEntry, cloth: ClothEntry, motif: MotifEntry, currency: CurrencyEntry,
  measure: MeasureField, signed: SignedEntry, length: LengthEntry,
  rate: RateEntry, number: NumberEntry, flag: FlagEntry, cloths: ClothsEntry,
  count: CountEntry, money: MoneyEntry, percent: PercentEntry, text: TextEntry, date: DateEntry, outline: OutlineEntry, side: SideEntry,
};
