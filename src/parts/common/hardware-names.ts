/** What a list of what to buy calls a washer: under one name the counts of all parts add up. */
export const WASHER = 'plain washer ISO 7089';
