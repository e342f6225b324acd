import { describe, expect, it } from 'vitest';
import { resolveSpecies } from '../../packages/core/src/names/resolve-species.js';

/*
 * Two hundred names drawn at random (without repeats) from living trees of two public inventories, with the row of
 * the species table that each should come to, checked by hand. Contains information licensed under the Open
 * Government Licence - Toronto (Street Tree Data, 2024; the first hundred); NYC Open Data, 2015 Street Tree Census
 * (the second hundred). A wrong genus is a failure; so is a species where only the genus is named.
 */
const NAMES = `
Thuja | Cedar | thuja
Acer palmatum | Maple, Japanese | acer-palmatum
Picea pungens | Spruce, Colorado blue | picea-pungens
Acer platanoides | Maple, Norway | acer-platanoides
Quercus velutina | Oak, black | quercus-velutina
Morus | Mulberry | morus
Malus sargentii | Apple, Sargents | malus-sargentii
Picea | Spruce | picea
Pinus nigra | Pine, Austrian | pinus-nigra
Gleditsia triacanthos | Honey locust | gleditsia-triacanthos
Syringa reticulata | Lilac, Japanese | syringa-reticulata
Ulmus pumila | Elm, Siberian | ulmus-pumila
Robinia pseudoacacia | Black locust | robinia-pseudoacacia
Picea abies | Spruce, Norway | picea-abies
Sorbus aucuparia | Mountain ash, European | sorbus-aucuparia
Acer platanoides 'Crimson King' | Maple, Norway Crimson King | acer-platanoides
Thuja occidentalis | Cedar, white | thuja-occidentalis
Tilia americana | Basswood, American | tilia-americana
Tilia cordata | Linden, littleleaf | tilia-cordata
Catalpa speciosa | Catalpa, northern | catalpa-speciosa
Juniperus | Juniper | juniperus
Acer saccharinum | Maple, silver | acer-saccharinum
Acer negundo | Maple, Manitoba | acer-negundo
Pyrus | Pear | pyrus
Morus alba 'pendula' | Mulberry, white weeping | morus-alba
Taxus | Yew | taxus
Betula papyrifera | Birch, white | betula-papyrifera
Fraxinus excelsior | Ash, European | fraxinus-excelsior
Prunus serrulata | Cherry, Japanese | prunus-serrulata
Gleditsia triacanthos 'Sunburst' | Honey locust Sunburst | gleditsia-triacanthos
Pinus resinosa | Pine, red | pinus-resinosa
Quercus robur 'Fastigiata' | Oak, English pyramidal | quercus-robur
Acer rubrum | Maple, red | acer-rubrum
Acer | Maple | acer
Prunus sargentii | Cherry, sargent | prunus-sargentii
Quercus rubra | Oak, red | quercus-rubra
Acer platanoides 'Schwedleri' | Maple, Norway Schwedler | acer-platanoides
Morus alba | Mulberry, white | morus-alba
Betula pendula 'European white' | Birch, European | betula-pendula
Acer tataricum subsp. ginnala | Maple, Amur | acer-tataricum
Acer x freemanii (A. rubrum x saccharinum) 'Armstrong' | Maple, Freeman Armstrong | acer-x-freemanii
Magnolia x soulngeana (M. denudata x liliiflora) | Magnolia, saucer | magnolia-x-soulangeana
Pinus strobus | Pine, eastern white | pinus-strobus
Prunus persica | Peach | prunus-persica
Ulmus | Elm | ulmus
Tilia | Linden | tilia
Ulmus parvifolia | Elm, Chinese | ulmus-parvifolia
Sorbus americana | Mountain ash, American | sorbus-americana
Picea glauca | Spruce, white | picea-glauca
Crataegus | Hawthorn | crataegus
Allianthus altissima | Tree of heaven | ailanthus-altissima
Malus | Apple | malus
Quercus palustris | Oak, pin | quercus-palustris
Sorbus thuringiaca 'Fastigiata' | Mountain ash, oak leaf | sorbus-x-thuringiaca
ginkgo biloba | Ginkgo | ginkgo-biloba
Abies | Fir | abies
Quercus robur | Oak, English | quercus-robur
Syringa | Lilac | syringa
Acer platanoides 'columnare' | Maple, Norway columnar | acer-platanoides
Acer saccharum | Maple, sugar | acer-saccharum
Amelanchier canadensis | Serviceberry | amelanchier-canadensis
Prunus spp. | Cherry | prunus
Malus coronaria | Apple, wild crab | malus-coronaria
Pyrus calleryana 'Chanticleer' | Pear Chanticleer | pyrus-calleryana
Quercus alba | Oak, white | quercus-alba
Acer platanoides 'Globosum' | Maple, Norway Globe | acer-platanoides
Aesculus glabra | Buckeye, Ohio | aesculus-glabra
Cercis canadensis | Redbud | cercis-canadensis
Sorbus | Mountain ash | sorbus
Salix | Willow | salix
Phellodendron amurense | Cork tree, Amur | phellodendron-amurense
Tsuga canadensis | Hemlock, eastern | tsuga-canadensis
Acer x freemanii (A. rubrum x saccharinum) | Maple, Freeman | acer-x-freemanii
Fraxinus pennsylvanica | Ash, green | fraxinus-pennsylvanica
Prunus virginiana Shubert | Cherry, choke Shubert | prunus-virginiana
Betula | Birch | betula
Aesculus hippocastanum | Horsechestnut | aesculus-hippocastanum
Pinus sylvestris | Pine scots | pinus-sylvestris
Prunus spp. | Plum | prunus
Pseudotsuga menziesii | Douglas fir | pseudotsuga-menziesii
Quercus | Oak | quercus
Juglans cinerea | Butternut | juglans-cinerea
Abies balsamaea | Fir, balsam | abies-balsamea
Juglans nigra | Walnut, black | juglans-nigra
Juglans | Walnut | juglans
Platanus x acerifolia | Planetree, London | platanus-x-acerifolia
Larix laricina | Larch | larix-laricina
Carya laciniosa | Hickory, big shellbark | carya-laciniosa
Acer nigrum 'Green column' | Maple, black green column | acer-nigrum
Ulmus glabra | Elm, wych | ulmus-glabra
Prunus virginiana | Cherry, choke | prunus-virginiana
Elaeagnus angustifolia | Olive, Russian | elaeagnus-angustifolia
Juniperus virginiana | Cedar, eastern red | juniperus-virginiana
Liquidambar styraciflua | Sweetgum | liquidambar-styraciflua
Gymnocladus dioicus | Kentucky coffeetree | gymnocladus-dioicus
Fagus grandifolia | Beech, American | fagus-grandifolia
Acer platanoides 'Emerald Queen' | Maple, Norway Emerald Queen | acer-platanoides
Morus rubra | Mulberry, red | morus-rubra
Acer x freemanii (A. rubrum x saccharinum) 'Autumn Blaze' | Maple, Freeman Autumn Blaze | acer-x-freemanii
Acer campestre | Maple, hedge | acer-campestre
Acer saccharum | sugar maple | acer-saccharum
Prunus | cherry | prunus
Platanus x acerifolia | London planetree | platanus-x-acerifolia
Tilia americana | American linden | tilia-americana
Tilia cordata | littleleaf linden | tilia-cordata
Fraxinus pennsylvanica | green ash | fraxinus-pennsylvanica
Styphnolobium japonicum | Sophora | styphnolobium-japonicum
Pyrus calleryana | Callery pear | pyrus-calleryana
Acer platanoides | Norway maple | acer-platanoides
Celtis occidentalis | common hackberry | celtis-occidentalis
Ginkgo biloba | ginkgo | ginkgo-biloba
Ulmus parvifolia | Chinese elm | ulmus-parvifolia
Gleditsia triacanthos var. inermis | honeylocust | gleditsia-triacanthos
Quercus phellos | willow oak | quercus-phellos
Quercus palustris | pin oak | quercus-palustris
Crataegus | hawthorn | crataegus
Quercus shumardii | Schumard's oak | quercus-shumardii
Zelkova serrata | Japanese zelkova | zelkova-serrata
Ulmus pumila | Siberian elm | ulmus-pumila
Paulownia tomentosa | empress tree | paulownia-tomentosa
Crataegus crusgalli var. inermis | cockspur hawthorn | crataegus-crus-galli
Gymnocladus dioicus | Kentucky coffeetree | gymnocladus-dioicus
Acer rubrum | red maple | acer-rubrum
Quercus robur | English oak | quercus-robur
Chionanthus retusus | Chinese fringetree | chionanthus-retusus
Quercus alba | white oak | quercus-alba
Liquidambar styraciflua | sweetgum | liquidambar-styraciflua
Quercus bicolor | swamp white oak | quercus-bicolor
Phellodendron amurense | Amur cork tree | phellodendron-amurense
Quercus rubra | northern red oak | quercus-rubra
Acer campestre | hedge maple | acer-campestre
Acer platanoides 'Crimson King' | crimson king maple | acer-platanoides
Ulmus americana | American elm | ulmus-americana
Tilia tomentosa | silver linden | tilia-tomentosa
Fagus grandifolia | American beech | fagus-grandifolia
Carpinus betulus | European hornbeam | carpinus-betulus
Taxodium ascendens | pond cypress | taxodium-ascendens
Ostrya virginiana | American hophornbeam | ostrya-virginiana
Cercis canadensis | eastern redbud | cercis-canadensis
Amelanchier | serviceberry | amelanchier
Acer | maple | acer
Malus | crab apple | malus
Sassafras albidum | sassafras | sassafras-albidum
Prunus cerasifera | purple-leaf plum | prunus-cerasifera
Ailanthus altissima | tree of heaven | ailanthus-altissima
Prunus virginiana | 'Schubert' chokecherry | prunus-virginiana
Acer saccharinum | silver maple | acer-saccharinum
Carpinus caroliniana | American hornbeam | carpinus-caroliniana
Pinus strobus | white pine | pinus-strobus
Quercus coccinea | scarlet oak | quercus-coccinea
Magnolia | magnolia | magnolia
Quercus velutina | black oak | quercus-velutina
Syringa reticulata | Japanese tree lilac | syringa-reticulata
Cornus alternifolia | pagoda dogwood | cornus-alternifolia
Juniperus virginiana | eastern redcedar | juniperus-virginiana
Albizia julibrissin | mimosa | albizia-julibrissin
Koelreuteria paniculata | golden raintree | koelreuteria-paniculata
Fraxinus | ash | fraxinus
Pinus resinosa | red pine | pinus-resinosa
Prunus serotina | black cherry | prunus-serotina
Fraxinus americana | white ash | fraxinus-americana
Quercus acutissima | sawtooth oak | quercus-acutissima
Robinia pseudoacacia | black locust | robinia-pseudoacacia
Acer palmatum | Japanese maple | acer-palmatum
Taxodium distichum | bald cypress | taxodium-distichum
Cercidiphyllum japonicum | katsura tree | cercidiphyllum-japonicum
Quercus imbricaria | shingle oak | quercus-imbricaria
Liriodendron tulipifera | tulip-poplar | liriodendron-tulipifera
Betula papyrifera | paper birch | betula-papyrifera
Metasequoia glyptostroboides | dawn redwood | metasequoia-glyptostroboides
Salix babylonica | weeping willow | salix-babylonica
Parrotia persica | Persian ironwood | parrotia-persica
Maackia amurensis | Amur maackia | maackia-amurensis
Styrax japonicus | Japanese snowbell | styrax-japonicus
Chamaecyparis thyoides | Atlantic white cedar | chamaecyparis-thyoides
Morus | mulberry | morus
Cornus florida | flowering dogwood | cornus-florida
Acer pseudoplatanus | sycamore maple | acer-pseudoplatanus
Thuja occidentalis | arborvitae | thuja-occidentalis
Quercus macrocarpa | bur oak | quercus-macrocarpa
Aesculus hippocastanum | horse chestnut | aesculus-hippocastanum
Carpinus japonica | Japanese hornbeam | carpinus-japonica
Acer griseum | paperbark maple | acer-griseum
Picea abies | Norway spruce | picea-abies
Betula nigra | river birch | betula-nigra
Eucommia ulmoides | hardy rubber tree | eucommia-ulmoides
Cladrastis kentukea | Kentucky yellowwood | cladrastis-kentukea
Halesia diptera | two-winged silverbell | halesia-diptera
Betula pendula | silver birch | betula-pendula
Juglans nigra | black walnut | juglans-nigra
Acer ginnala | Amur maple | acer-tataricum
Nyssa sylvatica | blackgum | nyssa-sylvatica
Acer tataricum | tartar maple | acer-tataricum
Cornus mas | Cornelian cherry | cornus-mas
Lagerstroemia | crepe myrtle | lagerstroemia-indica
Catalpa | catalpa | catalpa
Quercus falcata | southern red oak | quercus-falcata
Cornus kousa | kousa dogwood | cornus-kousa
Pinus | pine | pinus
Populus tremuloides | quaking aspen | populus-tremuloides
`
  .trim()
  .split('\n')
  .map((line) => line.split(' | ') as [string, string, string]);

describe('a name from a city inventory', () => {
  it('is one of two hundred', () => {
    expect(NAMES).toHaveLength(200);
  });

  it.each(NAMES)('%s (%s) is %s', (botanical, _common, key) => {
    expect(resolveSpecies(botanical).key).toBe(key);
  });
});
