import { lazy, Suspense } from 'react';
import { useNear } from '../use-near.ts';
import styles from './coupons.module.css';
import type { CouponsProps } from './coupons.tsx';

const Coupons = lazy(() => import('./coupons.tsx'));

/** The coupons, whose solids are built only once they come near the window. */
export default function CouponsWhenNear(props: CouponsProps) {
  const [place, isNear] = useNear<HTMLDivElement>();
  const coming = <section id="coupons" className={styles.coming} aria-busy="true" />;
  return (
    <div ref={place}>
      {isNear ? (
        <Suspense fallback={coming}>
          <Coupons {...props} />
        </Suspense>
      ) : (
        coming
      )}
    </div>
  );
}
