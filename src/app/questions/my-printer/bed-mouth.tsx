import {
  bedMouthChamfer,
  mouthLoss,
  USUAL_FLARE,
  USUAL_FLARED_LAYERS,
} from '../../../core/holes/first-layer-flare.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { derivedText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { PLACE } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { flareQuantities } from './printer-edits.ts';

const SLOT = 'bed-mouth';

interface BedMouthProps {
  readonly index: number;
  readonly printer: PrinterRecord | undefined;
  /** Of the part, mm. */
  readonly layerHeight: number;
}

/** What the flare of the first layers does to a mouth that lies on the bed, and the chamfer that clears it. */
export function BedMouth({ index, printer, layerHeight }: BedMouthProps) {
  const flare = {
    perSide: printer?.firstLayerFlare_mm ?? USUAL_FLARE,
    layers: printer?.flaredLayers ?? USUAL_FLARED_LAYERS,
    layerHeight,
  };
  const loss = mouthLoss(flare);
  const chamfer = bedMouthChamfer(flare);
  const { sign, words } = STANDINGS[chamfer.standing];
  return (
    <section className={styles['part']} aria-label="A mouth on the bed">
      <h3>A mouth on the bed</h3>
      {printer ? (
        <div className={styles['fields']}>
          {flareQuantities(index).map((quantity) => (
            <DocumentQuantity key={quantity.path} quantity={quantity} place={PLACE} optional />
          ))}
        </div>
      ) : null}
      <DerivationRow slot={SLOT}>
        <p className={styles['words']}>
          Where the part is printed with the hole’s mouth down, the first layer takes{' '}
          <ComputedValue
            derived={loss}
            text={derivedText(loss)}
            label={`What the first layer takes from the diameter, ${derivedText(loss)}`}
          />{' '}
          from its diameter. A chamfer of{' '}
          <b>
            <ComputedValue
              derived={chamfer}
              text={`${derivedText(chamfer)} × 45°`}
              label={`Chamfer of a mouth on the bed, ${derivedText(chamfer)}`}
            />
          </b>{' '}
          clears it.{' '}
          <span className="line">
            {sign} {words}
          </span>
        </p>
        <DerivationSlot name={SLOT} />
      </DerivationRow>
    </section>
  );
}
