import type { HowKnown } from './how-known.js';

export interface Source {
  readonly title: string;
  readonly authors?: string;
  readonly year?: number;
  /** Journal, standard or series. */
  readonly where: string;
  readonly note?: string;
  /** The best way in which we know it; a value taken from it may be known less well. */
  readonly known: HowKnown;
}

/** Everything a number in this package may be cited from. */
export const bibliography = {
  'our-judgement': {
    title: 'Our judgement',
    where: 'this project',
    note: 'A choice of ours, ordered and scaled by what the literature says.',
    known: 'judgement',
  },
  'common-practice': {
    title: 'Common practice of the trade',
    where: 'what drain layers and arborists generally do',
    known: 'memory',
  },
  'tree-books': {
    title: 'Ordinary sizes of garden and street trees as tree books give them',
    where: 'general reference works',
    note: 'From memory, rounded; not looked up again.',
    known: 'memory',
  },
  'bs-5837-2012': {
    title: 'Trees in relation to design, demolition and construction: recommendations',
    year: 2012,
    where: 'BS 5837:2012',
    note: 'Read in works that quote it; the standard itself was not opened.',
    known: 'quoted',
  },
  'as-4970-2009': {
    title: 'Protection of trees on development sites',
    year: 2009,
    where: 'AS 4970-2009',
    note: 'Formulas read in an extract.',
    known: 'quoted',
  },
  'matheny-clark-1998': {
    title: 'Trees and Development: A Technical Guide to Preservation of Trees During Land Development',
    authors: 'Matheny, N.; Clark, J. R.',
    year: 1998,
    where: 'International Society of Arboriculture',
    known: 'memory',
  },
  'ansi-a300-part5': {
    title: 'Management of Trees and Shrubs During Site Planning, Site Development, and Construction',
    where: 'ANSI A300 Part 5',
    known: 'memory',
  },
  'day-2010': {
    title: 'Contemporary concepts of root system architecture of urban trees',
    authors: 'Day, S. D.; Wiseman, P. E.; Dickinson, S. B.; Harris, J. R.',
    year: 2010,
    where: 'Arboriculture & Urban Forestry 36(4):149-159',
    note: 'Abstract.',
    known: 'read',
  },
  'gilman-1988-spread': {
    title: 'Predicting root spread from trunk diameter and branch spread',
    authors: 'Gilman, E. F.',
    year: 1988,
    where: 'Journal of Arboriculture 14(4):85-89',
    known: 'memory',
  },
  'gilman-1988-hortscience': {
    title: 'Tree root spread in relation to branch dripline and harvestable root ball',
    authors: 'Gilman, E. F.',
    year: 1988,
    where: 'HortScience 23(2):351-353',
    note: 'Abstract.',
    known: 'read',
  },
  'ifas-establishment': {
    title: 'Establishment period for trees',
    where: 'University of Florida, Institute of Food and Agricultural Sciences',
    known: 'read',
  },
  'gilman-1990': {
    title: 'Tree root growth and development. II. Response to culture, management and planting',
    authors: 'Gilman, E. F.',
    year: 1990,
    where: 'Journal of Environmental Horticulture 8(4):220-227',
    note: 'Abstract.',
    known: 'read',
  },
  'jackson-1996': {
    title: 'A global analysis of root distributions for terrestrial biomes',
    authors: 'Jackson, R. B.; Canadell, J.; Ehleringer, J. R.; Mooney, H. A.; Sala, O. E.; Schulze, E. D.',
    year: 1996,
    where: 'Oecologia 108:389-411, doi:10.1007/BF00333714',
    note: 'Abstract; betas that stand only in its tables are from memory.',
    known: 'read',
  },
  'mcpherson-2016': {
    title: 'Urban Tree Database and Allometric Equations',
    authors: 'McPherson, E. G.; van Doorn, N. S.; Peper, P. J.',
    year: 2016,
    where: 'USDA Forest Service PSW-GTR-253; data RDS-2016-0005, doi:10.2737/RDS-2016-0005',
    note: 'Tables of coefficients and of measured trees.',
    known: 'read',
  },
  'ostberg-2012': {
    title: 'Risk of root intrusion by tree and shrub species into sewer pipes in Swedish urban areas',
    authors: 'Östberg, J.; Martinsson, M.; Stål, Ö.; Fransson, A.-M.',
    year: 2012,
    where: 'Urban Forestry & Urban Greening 11:65-71',
    note: 'Abstract; the title is from memory.',
    known: 'read',
  },
  'torres-2017': {
    title:
      'Geostatistical analysis to identify characteristics involved in sewer pipes and urban tree interactions',
    authors: 'Torres, M. N.; Rodríguez, J. P.; Leitão, J. P.',
    year: 2017,
    where: 'Urban Forestry & Urban Greening 25:36-42',
    note: 'Abstract; title and authors are from memory.',
    known: 'read',
  },
  'sadler-2001': {
    title: 'Rubber ring joints and tree roots: interfacial pressure',
    authors: 'Sadler, P.; Burn, S.; Whittle, A.',
    year: 2001,
    where: 'proceedings of a plastics pipes conference',
    note: 'Abstract; the title is given by its sense, from memory.',
    known: 'read',
  },
  'randrup-2001': {
    title: 'Tree root intrusion in sewer systems: review of extent and costs',
    authors: 'Randrup, T. B.; McPherson, E. G.; Costello, L. R.',
    year: 2001,
    where: 'Journal of Infrastructure Systems 7(1):26-34, doi:10.1061/(ASCE)1076-0342(2001)7:1(26)',
    note: 'Abstract.',
    known: 'read',
  },
  'smiley-2008': {
    title: 'Root pruning and stability of young willow oak',
    authors: 'Smiley, E. T.',
    year: 2008,
    where: 'Arboriculture & Urban Forestry 34(2):123-128',
    note: 'Abstract.',
    known: 'read',
  },
  'cutler-richardson-1989': {
    title: 'Tree Roots and Buildings',
    authors: 'Cutler, D. F.; Richardson, I. B. K.',
    year: 1989,
    where: 'second edition, Longman',
    note: 'Distances read in a later reprint of the survey for householders; some from memory.',
    known: 'quoted',
  },
  'nhbc-4.2': {
    title: 'Building near trees',
    year: 2006,
    where: 'NHBC Standards, chapter 4.2, appendix 4.2-A, table 12',
    known: 'read',
  },
  'ansi-a300-part8': {
    title: 'Root management',
    where: 'ANSI A300 Part 8 and its best-practice guide',
    note: 'Sets no distance itself; its guide says no nearer than three to six trunk diameters. Read in a trade journal.',
    known: 'quoted',
  },
  'municipal-tunnelling-table': {
    title: 'Distance from the trunk at which tunnelling under roots starts, by trunk diameter',
    where: 'tree protection rules of American towns, read in a page that quotes one',
    note: 'The row above 19 in is from memory.',
    known: 'quoted',
  },
  'osha-1926-p': {
    title: 'Excavations',
    where: '29 CFR 1926 subpart P',
    note: 'Paragraphs 651 and 652 read in works that quote them.',
    known: 'quoted',
  },
  'osha-1926-aa': {
    title: 'Confined spaces in construction',
    where: '29 CFR 1926 subpart AA',
    known: 'memory',
  },
  'earthwork-pages': {
    title: 'Swell of dug soil',
    where: 'general earthwork pages, several that differ',
    note: 'Weak: ranges on public pages without measurements.',
    known: 'read',
  },
  'utility-tolerance-zones': {
    title: 'Locate requests and tolerance zones about marked utilities',
    where: 'state excavation laws of the US, 18 to 24 in each side',
    note: 'The wider of the common values is taken; read in guidance that quotes the laws. Some states ask for more.',
    known: 'quoted',
  },
  'astm-d2412': {
    title: 'External loading characteristics of plastic pipe by parallel-plate loading',
    where: 'ASTM D2412',
    note: 'Pipe stiffness at 5 % deflection; for a solid wall 4.47 E / (DR - 1)^3.',
    known: 'memory',
  },
  'astm-d3034': {
    title: 'Type PSM poly(vinyl chloride) sewer pipe and fittings',
    where: 'ASTM D3034',
    note: 'Scope and sizes read; the tables were not opened.',
    known: 'quoted',
  },
  'astm-d2729': {
    title: 'Poly(vinyl chloride) sewer pipe and fittings',
    where: 'ASTM D2729',
    note: 'Table of pipe stiffness read.',
    known: 'read',
  },
  'upson-2015': {
    title: 'Coarse root counts beside hybrid poplars in trench profiles, Silsoe',
    authors: 'Upson, M. A.; Burgess, P. J.; and others',
    year: 2015,
    where: 'open data, doi:10.6084/m9.figshare.1536770',
    known: 'read',
  },
  wgs84: {
    title: 'World Geodetic System 1984',
    where: 'NGA.STND.0036',
    known: 'memory',
  },
  'utility-root-list': {
    title: 'Tree roots and sewers: trees by the damage they do',
    where: 'leaflet of a public water utility in New South Wales',
    note: 'Ratings extreme, very high, high; the whole table was read.',
    known: 'read',
  },
  'bundaberg-root-list': {
    title: 'Sewer blockages from trees',
    where: 'Bundaberg Regional Council, Queensland',
    note: 'Trees not to be planted at all, or only from 10 m or 5 m; the whole table was read.',
    known: 'read',
  },
  'tile-drain-guidance': {
    title: 'Tile drains and tree roots',
    where: 'Ontario Ministry of Agriculture factsheet 12-055 and its versions in Indiana and Ohio',
    note: 'Willow, soft maple, elm and poplar 100 ft from tile, other trees 50 ft.',
    known: 'read',
  },
  'tennessee-sp628': {
    title: "Choosing 'sewer safer' trees",
    where: 'University of Tennessee Extension SP628',
    note: 'First page read; the list of trees read in a page that quotes it.',
    known: 'quoted',
  },
  'astm-a74': {
    title: 'Cast iron soil pipe and fittings',
    where: 'ASTM A74',
    note: 'Laying lengths read in the scope.',
    known: 'read',
  },
  'astm-d1785': {
    title: 'Poly(vinyl chloride) plastic pipe, schedules 40, 80, and 120',
    where: 'ASTM D1785',
    note: 'Dimensions read in a published table of pipe data.',
    known: 'quoted',
  },
  'aashto-m252': {
    title: 'Corrugated polyethylene drainage pipe',
    where: 'AASHTO M252 (3 to 10 in), M294 (12 in and over)',
    note: 'Nominal size is the inside diameter (read); stiffness from memory.',
    known: 'quoted',
  },
  'astm-f667': {
    title: '3 through 24 in. corrugated polyethylene pipe and fittings',
    where: 'ASTM F667/F667M; before 2015 ASTM F405',
    note: 'Scope read; stiffness from memory.',
    known: 'read',
  },
  'caltrans-hdm-851': {
    title: 'Highway Design Manual, table 851.2: Manning n for closed conduits',
    where: 'California Department of Transportation',
    note: 'Read in a work that quotes it.',
    known: 'quoted',
  },
  'fhwa-hec22': {
    title: 'Urban Drainage Design Manual: Manning n for storm drain conduits',
    where: 'FHWA Hydraulic Engineering Circular 22',
    note: 'Ranges read in a table that repeats it.',
    known: 'quoted',
  },
  'manning-1891': {
    title: 'On the flow of water in open channels and pipes',
    authors: 'Manning, R.',
    year: 1891,
    where: 'Transactions of the Institution of Civil Engineers of Ireland 20:161-207',
    note: 'The formula was read in works that use it; the title is from memory.',
    known: 'quoted',
  },
  'kuichling-1889': {
    title: 'The relation between the rainfall and the discharge of sewers in populous districts',
    authors: 'Kuichling, E.',
    year: 1889,
    where: 'Transactions of the American Society of Civil Engineers 20:1-60',
    note: 'The rational method, read in works that use it; the title is from memory.',
    known: 'quoted',
  },
  'asce-runoff-table': {
    title: 'Design and construction of sanitary and storm sewers: runoff coefficients',
    where: 'American Society of Civil Engineers, manual of practice 37',
    note: 'Storms of 5 to 10 years; ranges read in course texts that repeat the table.',
    known: 'quoted',
  },
  'us-plumbing-code-storm': {
    title: 'National Standard Plumbing Code: sizing of storm drains',
    where: 'National Standard Plumbing Code, table 13.6.2 and appendix',
    note: 'All rain on a roof runs off; the worked example and the derivation were read.',
    known: 'read',
  },
  'chicago-plumbing-code': {
    title: 'Plumbing: slope of drainage pipe, storm drainage',
    where: 'Municipal Code of Chicago 18-29-704.1 and 18-29-1106',
    known: 'read',
  },
  'aspe-data-book': {
    title: 'Data Book, volume 2: storm drainage',
    where: 'American Society of Plumbing Engineers, page 88',
    known: 'read',
  },
  'austin-drainage-criteria': {
    title: 'Drainage Criteria Manual: minimum n for storm drains',
    where: 'City of Austin, table 5-2',
    known: 'read',
  },
  'en-1401': {
    title: 'Plastics piping systems for underground drainage: unplasticized poly(vinyl chloride)',
    where: 'EN 1401-1',
    note: 'Named by the outside diameter; SDR 34 for the stiffer usual grade.',
    known: 'memory',
  },
  'service-life-ranges': {
    title: 'Service lives of drain pipes as the trade quotes them',
    where: 'ranges on plumbing and drainage pages',
    note: 'Weak: no sample behind them. Roots are not counted. For ranking only.',
    known: 'read',
  },
} as const satisfies Readonly<Record<string, Source>>;

/** Key of one entry of the bibliography. */
export type SourceKey = keyof typeof bibliography;
