export { type CsvCell as Cell, csvText as csv } from '@rootreach/core';
