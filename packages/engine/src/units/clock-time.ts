/** Time of day as files and sentences write it: 9.5 as '09:30'. @param hour after midnight [h], 0 to 24 @source derived */
export function clockTime(hour: number): string {
  const minutes = Math.round(hour * 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
