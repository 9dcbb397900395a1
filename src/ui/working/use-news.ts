import { useEffect, useRef, useState } from 'react';
import { writeAddress } from '../../base/address.ts';
import type { Explanation } from '../../session/explanation.ts';
import { speakFigure } from './speak-figure.ts';

/** What to read out when the value of the cell changes while one looks at it. Silent when another cell is chosen. */
export function useNews(cellKey: string, explanation: Explanation | null): string {
  const last = useRef({ cellKey: '', spoken: '' });
  const [news, setNews] = useState('');
  const place = explanation ? explanation.label || writeAddress(explanation.address) : '';
  const spoken = explanation ? speakFigure(explanation) : '';
  useEffect(() => {
    const before = last.current;
    last.current = { cellKey, spoken };
    if (before.cellKey !== cellKey) setNews('');
    else if (before.spoken !== spoken) setNews(`${place}: ${spoken}`);
  }, [cellKey, spoken, place]);
  return news;
}
