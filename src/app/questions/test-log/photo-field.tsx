import { useEffect, useId, useState } from 'react';
import { downscaled, keepPhoto, keptPhoto, removePhoto } from '../../state/photos.ts';
import { useSheetActions } from '../../state/sheet-context.ts';
import styles from './test-log.module.css';

interface PhotoFieldProps {
  readonly path: string;
  /** Name of the photo that the document gives; absent: none. */
  readonly photo: string | undefined;
  readonly testId: string;
}

/** Address of a kept photo while it is shown; null where this device has none of that name. */
function usePhotoAddress(photo: string | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (photo === undefined) return undefined;
    let made: string | null = null;
    let isGone = false;
    const show = (blob: Blob | undefined) => {
      if (isGone || blob === undefined) return;
      made = URL.createObjectURL(blob);
      setAddress(made);
    };
    keptPhoto(photo).then(show, () => setAddress(null));
    return () => {
      isGone = true;
      if (made !== null) URL.revokeObjectURL(made);
      setAddress(null);
    };
  }, [photo]);
  return address;
}

/** A photo of the broken coupon: taken, made smaller and kept on this device only. */
export function PhotoField({ path, photo, testId }: PhotoFieldProps) {
  const id = useId();
  const { edit } = useSheetActions();
  const address = usePhotoAddress(photo);
  const [fault, setFault] = useState<string | null>(null);
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setFault(null);
    try {
      const name = `${testId}-${Date.now()}`;
      await keepPhoto(name, await downscaled(file));
      if (photo !== undefined) void removePhoto(photo);
      edit(path, { path, value: name });
    } catch {
      setFault(`${file.name} is no picture that this browser can read, or there is no room for it.`);
    }
  };
  const remove = () => {
    if (photo !== undefined) removePhoto(photo).catch(() => setFault('The photo could not be taken away.'));
    edit(path, { path, value: undefined });
  };
  return (
    <div className={styles.photo}>
      <span id={`${id}-what`}>Photo of the coupon</span>
      <span className={styles.presses}>
        <label className={`press ${styles.take}`} htmlFor={id}>
          <span id={`${id}-press`}>
            {photo === undefined ? 'Take or choose one' : 'Take or choose another'}
          </span>
          <input
            id={id}
            type="file"
            accept="image/*"
            aria-labelledby={`${id}-what ${id}-press`}
            onChange={(event) => {
              void take(event.target.files?.[0]);
              // The same file can be chosen again.
              event.target.value = '';
            }}
          />
        </label>
        {photo === undefined ? null : (
          <button type="button" className="press" onClick={remove}>
            Take the photo away
          </button>
        )}
      </span>
      {address === null ? null : <img src={address} alt={`The coupon of ${testId} after the test`} />}
      {photo !== undefined && address === null ? (
        <p className={styles.quiet}>The photo is on the device that it was taken on.</p>
      ) : null}
      {fault === null ? null : (
        <p role="alert" className={styles.fault}>
          <b>Not taken.</b> {fault}
        </p>
      )}
    </div>
  );
}
