/** Words that add nothing to a tree's name. */
export const fillerWords: ReadonlySet<string> = new Set(
  `tree trees specimen common young mature semi old large big small medium tall huge multi single twin double
  stem stemmed stems trunk trunked leaning seedling sapling self seeded cultivar variety var cv sp spp species hybrid hybrids
  street park private city town existing a an the of in on and with at by near my our some two three likely
  probably possibly maybe perhaps ornamental dwarf standard row group hedge hedges native wild`.split(/\s+/),
);

/** Words by which people say that they do not know. */
export const ignoranceWords: ReadonlySet<string> = new Set(
  `unknown unidentified unid unspecified undetermined unsure unlisted other others misc miscellaneous none null na
  nil not listed identified known recorded available assigned tbd species spp sp tree trees plant shrub shrubs
  n a is id any various mixed assorted to be`.split(/\s+/),
);

/** Plain words that lie one slip from a tree's name and are never mended into it. */
export const neverMended: ReadonlySet<string> = new Set(
  `plant plants plan planet place plate plain plans beach bench older large apply linen house popular
  whole while holly sorry grape heavy grass ground green stone street south north
  bushes branch perch porch march later water alter clock block plaza plumb pump plume`.split(/\s+/),
);

/** Garden and woodland genera that the table does not hold; their names are not slips of other genera. */
export const otherGenera: ReadonlySet<string> = new Set(
  `abelia abutilon ardisia aronia azara berberis buddleja buddleia callicarpa calocephalus calycanthus carica carissa cassine cassinia castanopsis
  castanospermum ceanothus cedrela celastrus
  cestrum cistus clerodendrum clethra coprosma corokia cotoneaster cycas cytisus daphne deutzia dodonaea duranta
  embothrium escallonia eucryphia eugenia exochorda forsythia fothergilla fuchsia garrya genista griselinia hedera hovenia
  hydrangea hypericum itea ixora kalmia kerria kolkwitzia lantana lithocarpus lavandula leucaena lonicera mahonia malva
  morinda musa myrica osmanthus paliurus philadelphus physocarpus pieris polylepis potentilla pyracantha raphiolepis ribes
  rosa rosmarinus rubus ruscus salvia sarcococca sideroxylon skimmia solanum sorbaria spartium spiraea staphylea
  symphoricarpos tamarindus tecoma thevetia ulex vaccinium vitis weigela wisteria zanthoxylum ziziphus`.split(
    /\s+/,
  ),
);
