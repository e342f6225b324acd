import { describe, expect, it } from 'vitest';
import { streetOf } from '../../packages/intake/src/values/street.js';
import { featuresOf, guessOf, taken } from './town-files.js';

// how addresses are written in these countries is common practice
describe('the street of an address', () => {
  it.each([
    ['123 ELM ST', 'ELM ST'],
    ['12-14 Elm  Street', 'Elm Street'],
    ['1207 1/2 N Oak Ave, Unit 3', 'N Oak Ave'],
    ['12A High Street', 'High Street'],
    ['100 W 5TH ST', 'W 5TH ST'],
    ['12 bis rue des Lilas', 'rue des Lilas'],
    ['12, rue des Lilas', 'rue des Lilas'],
    ['42', '42'],
    ['Lindenstraße 12a', 'Lindenstraße'],
    ['Am Bach 3', 'Am Bach'],
    ['Lange Gasse 5/b', 'Lange Gasse'],
    ['Calle Mayor, 12', 'Calle Mayor'],
    ['Calle Mayor nº 12', 'Calle Mayor'],
    ['Via Roma 5', 'Via Roma'],
    ['Kerkstraat 12-14', 'Kerkstraat'],
    // names that are numbers
    ['5th Ave', '5th Ave'],
    ['42 St', '42 St'],
    ['Calle 5', 'Calle 5'],
    ['Route 9', 'Route 9'],
    ['Elm St', 'Elm St'],
    ['', ''],
  ])('%j: %j', (address, street) => {
    expect(streetOf(address)).toBe(street);
  });
});

describe('the column of the street', () => {
  const table = (header: string, value: (i: number) => string): string => {
    const rows = Array.from(
      { length: 30 },
      (_, i) => `${value(i)},Acer rubrum,${20 + i},${-71 - i / 1e4},40.6`,
    );
    return `${header},Botanical Name,DBH,longitude,latitude\n${rows.join('\n')}\n`;
  };

  it.each([
    'Street',
    'ON_STREET',
    'Road Name',
    'Straße',
    'nom_voie',
    'Calle',
    'Via',
    'Address',
    'Dirección',
    'Indirizzo',
  ])('is found by the name %s', async (header) => {
    const file = await taken(
      'trees.csv',
      table(header, (i) => `${i + 1} Elm Street`),
    );
    expect(guessOf(file, 'street')).toBe(header);
    expect(featuresOf(file)[4]?.properties).toMatchObject({
      street: 'Elm Street',
      dbh_cm: expect.any(Number),
    });
  });

  it('is the street rather than the address, and holds no bare numbers', async () => {
    const both = table('Address,Street', (i) => `${i} Oak Rd,Elm Street`);
    expect(guessOf(await taken('trees.csv', both), 'street')).toBe('Street');
    expect(guessOf(await taken('trees.csv', table('Street', String)), 'street')).toBe('');
  });

  it('is found for lines too', async () => {
    const features = Array.from({ length: 20 }, (_, i) => ({
      type: 'Feature',
      properties: { MATERIAL: 'VCP', STREET_NAME: 'Elm St', DIAMETER: 8 },
      geometry: {
        type: 'LineString',
        coordinates: [
          [-71, 40 + i / 1e4],
          [-71.001, 40 + i / 1e4],
        ],
      },
    }));
    const file = await taken('pipes.geojson', JSON.stringify({ type: 'FeatureCollection', features }));
    expect(featuresOf(file)[0]?.properties).toMatchObject({ kind: 'drain', street: 'Elm St' });
  });
});
