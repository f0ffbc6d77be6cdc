import { expect, test } from 'vitest';
import { roomNamedIn } from './rooms.ts';

test('the room of a text is the CSV file it names, if that could lie beside it', () => {
  expect(roomNamedIn('room:\n  series: my-room.csv   # measured\n')).toBe('my-room.csv');
  expect(roomNamedIn('room: { series: "Room_2.csv", carbon-dioxide: 600 ppm }')).toBe('Room_2.csv');
  expect(roomNamedIn('room:\n  series: espoo-living-room\n')).toBeUndefined();
  expect(roomNamedIn('room:\n  series: ../other/room.csv\n')).toBeUndefined();
});
