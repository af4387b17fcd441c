// @vitest-environment jsdom
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { Twin } from '../../../src/app/charts/twin.tsx';

describe('the content of a picture as tables', () => {
  test('is drawn while it is open, and not before or after', async () => {
    render(<Twin summary="The chart as a table">{<p>one number</p>}</Twin>);
    expect(screen.queryByText('one number')).toBeNull();
    await userEvent.click(screen.getByText('The chart as a table'));
    expect(screen.getByText('one number')).toBeTruthy();
    await userEvent.click(screen.getByText('The chart as a table'));
    expect(screen.queryByText('one number')).toBeNull();
  });
});
