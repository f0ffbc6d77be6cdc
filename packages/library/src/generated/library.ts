// Written by packages/library/build/build-library.ts from packages/library/data; edit the data, not this file.
import type { LibraryData } from '../schema/entries.ts';

export const LIBRARY_DATA: LibraryData = {
 "organisms": {
  "anentome-helena": {
   "id": "anentome-helena",
   "name": "assassin snails",
   "about": "Snail that eats other snails and carrion. Slow to breed, one embryo in each capsule; when the prey is gone it needs meat.",
   "cautions": [
    "It does not stop at pest snails: ornamental snails of up to its own size are eaten too."
   ],
   "scientificName": "Anentome helena",
   "group": "predatory snail",
   "leastFounders": {
    "value": 4,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "To have both sexes."
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "fairly",
    "note": "Egg time and size at hatching are measured; how many snails it kills in a day is told by keepers only, since the published means were not seen."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "night",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Comes out of the sand at dusk and hunts mostly in the dark; also by day where food smells."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "published",
     "source": "Coelho, Dinis and Reis 2013, Journal of Aquaculture Research and Development 4: 187, abstract"
    },
    "lengthMeasure": "shell length",
    "lengthAtBirth": {
     "value": 3.1,
     "unit": "mm",
     "min": 2.5,
     "max": 3.7,
     "basis": "published",
     "source": "Coelho, Dinis and Reis 2013, Journal of Aquaculture Research and Development 4: 187, abstract"
    },
    "adultLength": {
     "value": 22,
     "unit": "mm",
     "min": 20,
     "max": 35,
     "basis": "page",
     "source": "Encyclopaedia article on Clea helena, a mirror of Wikipedia"
    },
    "adultMass": {
     "value": 450,
     "unit": "mg",
     "min": 250,
     "max": 900,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body."
    },
    "dryPart": {
     "value": 0.18,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 240,
     "unit": "d",
     "min": 180,
     "max": 300,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 4,
     "unit": "1",
     "min": 1,
     "max": 8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 15,
     "unit": "d",
     "min": 7,
     "max": 30,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodTime": {
     "value": 52,
     "unit": "d",
     "min": 40,
     "max": 64,
     "basis": "published",
     "source": "Coelho, Dinis and Reis 2013, Journal of Aquaculture Research and Development 4: 187, abstract"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 800,
     "unit": "d",
     "min": 730,
     "basis": "page",
     "source": "Species page on Clea helena of the shop EsferAnimal",
     "note": "730 d on average, can be longer."
    }
   },
   "traits": {
    "copperMedianLethal": {
     "value": 400,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 170,
     "max": 1600,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Between Melanoides and Campeloma decisum, 1700 µg/L in soft water (Arthur and Leonard 1970): snails that shut their shells bear more than those without a lid."
    },
    "saltHigh": {
     "value": 8.9,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.33,
     "min": 5.34,
     "max": 12.46,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "5 g/L."
    },
    "saltHighMargin": {
     "value": 3.1,
     "unit": "mS/cm",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.72,
     "max": 5.58,
     "basis": "published",
     "source": "Kefford et al. 2003, Marine and Freshwater Research 54: 755-765; abstract",
     "note": "72-hour lethal 9 to 14 mS/cm of gastropods, worms and planarians."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "page",
      "source": "Species page on Clea helena of the shop EsferAnimal"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 3,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "page",
      "source": "Species page on Clea helena of the shop EsferAnimal"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.3,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Breathes by gills."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.18,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.59,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 25,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "crustaceans": {
      "value": 0.03,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.92,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "No special rule is known.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Traded all over the world and a likely invader of warm waters; never release it.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Once the pest snails are gone, feed meat or give the snails away.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "anolis-carolinensis": {
   "id": "anolis-carolinensis",
   "name": "green anoles",
   "about": "Tree lizard, active by day, that needs a dry, bright canopy with a basking place and UV; drinks drops, buries single eggs.",
   "cautions": [
    "Without a UVB lamp and a basking place its bones soften.",
    "A closed, wet box does not suit it: it needs a dry, bright canopy."
   ],
   "scientificName": "Anolis carolinensis",
   "group": "lizard",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "min": 2,
    "max": 4,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "One male with one to three females."
   },
   "known": {
    "level": "fairly",
    "note": "Growth, hatching size and egg time are published; mass, food and pace of laying are recalled or from an encyclopaedia. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "land",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 27,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 24,
     "unit": "mm",
     "basis": "published",
     "source": "Michael 1972, Copeia 1972: 575-577; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 47,
     "unit": "mm",
     "min": 45,
     "max": 50,
     "basis": "published",
     "source": "Michael 1972, Copeia 1972: 575-577; via the Add-my-Pet species file"
    },
    "adultLength": {
     "value": 57,
     "unit": "mm",
     "min": 45,
     "max": 73,
     "basis": "published",
     "source": "Michael 1972, Copeia 1972: 575-577; via the Add-my-Pet species file",
     "note": "Females 45 to 65 mm, males 60 to 73 mm."
    },
    "adultMass": {
     "value": 4500,
     "unit": "mg",
     "min": 2500,
     "max": 7000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.28,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 400,
     "unit": "d",
     "min": 330,
     "max": 490,
     "basis": "published",
     "source": "Michael 1972, Copeia 1972: 575-577; via the Add-my-Pet species file",
     "note": "395 to 490 d with winter rest."
    },
    "youngPerBrood": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 30,
     "unit": "d",
     "min": 7,
     "max": 45,
     "basis": "page",
     "source": "Encyclopedia of Life on Anolis carolinensis; via the Add-my-Pet species file",
     "note": "12 eggs a year; every one to two weeks in season."
    },
    "broodTime": {
     "value": 42,
     "unit": "d",
     "basis": "page",
     "source": "AnAge database of animal ageing and longevity; via the Add-my-Pet species file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1700,
     "unit": "d",
     "max": 2628,
     "basis": "page",
     "source": "AnAge database of animal ageing and longevity; via the Add-my-Pet species file",
     "note": "2628 d is the record."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 35,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 12,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.94,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "amphibians": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "reptiles": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "reptiles",
   "place": {
    "margin": {
     "value": 0.01,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.09,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.9,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 2400,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For a pair."
    },
    "height": {
     "value": 60,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 1200,
     "unit": "cm²",
     "min": 1000,
     "max": 6000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Has driven insects and lizards to the brink on Japanese islands; never release it.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "law",
     "text": "Several countries list it; ask before you buy.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "aplocheilus-lineatus": {
   "id": "aplocheilus-lineatus",
   "name": "striped panchax",
   "about": "Surface hunter of seven to ten centimetres that takes flies, young shrimp and small fish; spawns a few eggs a day among plants.",
   "cautions": [
    "It eats fish under 25 mm.",
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Aplocheilus lineatus",
   "group": "killifish",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "No measured values were found; all is recalled or told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 5.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 85,
     "unit": "mm",
     "min": 70,
     "max": 100,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 4500,
     "unit": "mg",
     "min": 2500,
     "max": 8000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 190,
     "unit": "d",
     "min": 150,
     "max": 240,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 7,
     "unit": "1",
     "min": 3,
     "max": 12,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Eggs a day in season."
    },
    "broodInterval": {
     "value": 2,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Nearly daily in season, with rests."
    },
    "broodTime": {
     "value": 13,
     "unit": "d",
     "min": 11,
     "max": 16,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1300,
     "unit": "d",
     "min": 1000,
     "max": 1800,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.08,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.03,
     "max": 0.25,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About a third of the eggs laid hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 23,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 15,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.72,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.08,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 80,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 150,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Males keep apart at the surface."
    }
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "asellus-aquaticus": {
   "id": "asellus-aquaticus",
   "name": "water louse",
   "about": "Isopod of still water that shreds rotting leaves and lives through low oxygen; clean-up crew of leaf litter.",
   "cautions": [
    "Native in Europe; do not move it between waters and do not release it.",
    "Wild-collected animals can carry parasites of fish; use bred stock.",
    "Wash hands after work in the water; keep it away from mouth and open wounds."
   ],
   "scientificName": "Asellus aquaticus",
   "group": "aquatic isopod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.2,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass."
   },
   "known": {
    "level": "well",
    "note": "Incubation at seven temperatures, brood size by length and growth on litter are measured. Size at release is reported in two ways that do not agree."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "More active in the dark; eats in its litter at all hours."
   },
   "traits": {
    "referenceTemperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Shihab and Heath 1987, Heredity 58: 69-73; via the Add-my-Pet species file"
    },
    "dryMassPerCube": {
     "value": 0.007,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 0.005,
     "max": 0.01,
     "basis": "published",
     "source": "Arakelova 2001, Aquatic Ecotoxicology 35: 31-42; via the Add-my-Pet species file",
     "note": "45 to 48 mg wet at 10 to 12 mm, taken as one fifth dry (memory)."
    },
    "lengthAtBirth": {
     "value": 1.1,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.85,
     "max": 1.4,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Between 0.8 mm at release (Verovnik et al. 2009) and 0.5 mg wet with adhering water (Marcus et al. 1978)."
    },
    "lengthAtPuberty": {
     "value": 3.2,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.2,
     "min": 2.7,
     "max": 4,
     "basis": "published",
     "source": "Arakelova 2001, Aquatic Ecotoxicology 35: 31-42; via the Add-my-Pet species file",
     "note": "3 to 3.5 mm."
    },
    "lengthAtEnd": {
     "value": 12,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.6,
     "min": 10,
     "max": 14,
     "basis": "published",
     "source": "Verovnik et al. 2009, Zoologischer Anzeiger 248: 101-118; via the Add-my-Pet species file"
    },
    "growthRate": {
     "value": 0.0095,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 0.0065,
     "max": 0.014,
     "basis": "published",
     "source": "Marcus et al. 1978, Freshwater Biology 8: 505-519; via the Add-my-Pet species file",
     "note": "Fits mass at age 39 to 97 d at 25 °C on good litter and maturity after 30 d at 15 °C."
    },
    "shareToSoma": {
     "value": 0.81,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.73,
     "max": 0.89,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Gives broods of 33 at 5.2 mm to 124 at 9.9 mm (Shihab and Heath 1987)."
    },
    "eggPerNewborn": {
     "value": 1.4,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 1.15,
     "max": 1.8,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.35,
     "max": 0.65,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 15,
     "unit": "d",
     "distribution": "normal",
     "spread": 0.8,
     "min": 12.5,
     "max": 18,
     "basis": "published",
     "source": "Roshchin and Mazelev 1979, Navuk BSSR 1: 128-130; via the Add-my-Pet species file"
    },
    "broodInterval": {
     "value": 27,
     "unit": "d",
     "distribution": "normal",
     "spread": 3,
     "min": 20,
     "max": 38,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "breedingCoolest": {
     "value": 7.5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 6,
     "max": 10,
     "basis": "published",
     "source": "Okland 1978, Hydrobiologia 59: 243-259; abstract",
     "note": "Breeding starts at 7 to 8 °C."
    },
    "breedingWarmest": {
     "value": 27,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 24.5,
     "max": 30,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "activationEnergy": {
     "value": 0.65,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.45,
     "max": 0.85,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodActivationEnergy": {
     "value": 0.7,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.58,
     "max": 0.82,
     "basis": "published",
     "source": "Roshchin and Mazelev 1979, Navuk BSSR 1: 128-130; via the Add-my-Pet species file",
     "note": "With the brood time above within 15 % of incubation at 7 to 24 °C."
    },
    "heatLimit": {
     "value": 32,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 29.5,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.085,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.007,
     "min": 0.06,
     "max": 0.11,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.012,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.006,
     "max": 0.018,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.6,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.3,
     "max": 1.2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "30 to 80 mg dry leaf per g wet and day at 15 to 20 °C for adults."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 0.6,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.2,
     "max": 1.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.6,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.25,
     "max": 1.5,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.3,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.08,
     "max": 1,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.01,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.001,
     "max": 0.05,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.3,
     "max": 0.7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnDetritus": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnLitter": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.1,
     "max": 0.4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.2 to 0.4 on softened leaves."
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.1,
     "max": 0.45,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 380,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 250,
     "max": 600,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "9 to 20 months in the field."
    },
    "adultLoss": {
     "value": 0.003,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.001,
     "max": 0.008,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "juvenileLoss": {
     "value": 0.008,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.003,
     "max": 0.02,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodLoss": {
     "value": 0.008,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.002,
     "max": 0.03,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 1,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.5,
     "min": 0,
     "max": 3,
     "basis": "published",
     "source": "Okland 1978, Hydrobiologia 59: 243-259; abstract"
    },
    "temperatureHigh": {
     "value": 28,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 25.5,
     "max": 31,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 5.5,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 4.9,
     "max": 6.1,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHHigh": {
     "value": 8.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8.2,
     "max": 9.6,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.6,
     "min": 1.5,
     "max": 5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessHigh": {
     "value": 25,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 3,
     "min": 18,
     "max": 35,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "oxygenMargin": {
     "value": 0.7,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.35,
     "max": 1.4,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.25,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.08,
     "max": 0.55,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About one tenth of the lethal concentration."
    },
    "ammoniaMedianLethal": {
     "value": 2.3,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.1,
     "max": 4.6,
     "basis": "memory",
     "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)"
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 15,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 4,
     "max": 60,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "crowdingHazard": {
     "value": 0.015,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.004,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "saltHigh": {
     "value": 14,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 2.1,
     "min": 8.4,
     "max": 19.6,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "8 g/L."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.25,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 25,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "fastestChange": {
    "waterTemperature": {
     "value": 2.5,
     "unit": "K",
     "basis": "page",
     "source": "Sprague 1963, Journal of the Fisheries Research Board of Canada 20: 387-415; abstract",
     "note": "Of Asellus intermedius: acclimation temperature could be raised by 2.5 to 5 K a day above 14 °C; the lower end."
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 5,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Native over much of Europe; taking it from the wild can be regulated.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "atyopsis-moluccensis": {
   "id": "atyopsis-moluccensis",
   "name": "bamboo shrimp",
   "about": "Large shrimp that fans fine particles out of a current. Its larvae need sea water. It starves in clean, still water.",
   "cautions": [
    "It needs a current that carries fine food; a shrimp that picks on the ground is starving.",
    "Copper kills shrimp: no copper pipes, medicines or plant food with copper."
   ],
   "scientificName": "Atyopsis moluccensis",
   "group": "shrimp",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.12,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Thin cuticles hold little mineral."
   },
   "known": {
    "level": "poorly",
    "note": "Nothing of its growth, food intake or tolerance was found in print; all numbers are recalled, told by keepers or judged."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "development": "brackish larvae",
   "active": {
    "when": "night",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Fans food out of the flow mostly after dusk."
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 2,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "As in other large shrimp with larvae at sea."
    },
    "adultLength": {
     "value": 75,
     "unit": "mm",
     "min": 60,
     "max": 100,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 3500,
     "unit": "mg",
     "min": 2000,
     "max": 6000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 365,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "youngPerBrood": {
     "value": 2000,
     "unit": "1",
     "min": 1000,
     "max": 3000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 60,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 25,
     "unit": "d",
     "min": 20,
     "max": 30,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1200,
     "unit": "d",
     "min": 730,
     "max": 1800,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 2,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 5,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 5,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "biofilm": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "suspended algae": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": true,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 80,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild; no special rule is known.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Feed fine powder into the current several times a week and watch that it fans.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "betta-splendens": {
   "id": "betta-splendens",
   "name": "Siamese fighting fish",
   "about": "Breathes air at the surface and builds a nest of bubbles that the male guards; males fight to the death.",
   "cautions": [
    "Males always alone; a pair only to breed, and watched.",
    "It needs warm, moist air above the water: keep the lid on."
   ],
   "scientificName": "Betta splendens",
   "group": "labyrinth fish",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "min": 1,
    "max": 2,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "One male lives alone; breeding needs a pair."
   },
   "known": {
    "level": "fairly",
    "note": "Age at maturity, pace of spawning and mass by length are in print; egg numbers and food are recalled."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 27,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 55,
     "unit": "mm",
     "min": 50,
     "max": 70,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 1600,
     "unit": "mg",
     "min": 1200,
     "max": 3290,
     "basis": "page",
     "source": "FishBase length and weight relation of Betta splendens: W = 0.00977 TL^2.99, g and cm; via the Add-my-Pet species file"
    },
    "maturityAge": {
     "value": 140,
     "unit": "d",
     "min": 90,
     "max": 150,
     "basis": "page",
     "source": "Balasubramani and Pandian 2008, as listed in a table of Pandian, Genetic Sex Differentiation in Fish"
    },
    "youngPerBrood": {
     "value": 150,
     "unit": "1",
     "min": 50,
     "max": 400,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 14,
     "unit": "d",
     "min": 10,
     "max": 30,
     "basis": "page",
     "source": "Balasubramani and Pandian 2008, as listed in a table of Pandian, Genetic Sex Differentiation in Fish"
    },
    "broodTime": {
     "value": 2,
     "unit": "d",
     "min": 1.5,
     "max": 3,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1000,
     "unit": "d",
     "min": 700,
     "max": 1500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "nitriteMedianLethal": {
     "value": 344,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 105,
     "max": 800,
     "basis": "published",
     "source": "Kajimura et al. 2023, BMC Zoology 8; abstract",
     "note": "96 h, adults: 24.6 mmol/L; it breathes air and so takes up less. The chloride of the water is not in the abstract."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 25,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Breathes air."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 8,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.3,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.45,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.15,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "often"
   },
   "space": {
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 900,
     "unit": "cm²",
     "min": 900,
     "max": 2000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "welfare",
     "text": "Two males in one tank kill each other; long-finned strains tire in strong currents.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "bombina-orientalis": {
   "id": "bombina-orientalis",
   "name": "fire-bellied toads",
   "about": "Half-aquatic, active by day and long-lived; breeds in shallow water after a cool winter. Its skin gives off poison.",
   "cautions": [
    "The skin gives off poison: wash hands, keep away from eyes, and keep no other species with it.",
    "It lives about twenty years."
   ],
   "scientificName": "Bombina orientalis",
   "group": "toad",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Growth from the change to 240 d, egg numbers and age are in print; mass and time to maturity are recalled, and tadpoles are computed with the speed of the grown animal. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 3.6,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 4 mg, as a hatchling does (memory)."
    },
    "lengthAtPuberty": {
     "value": 34,
     "unit": "mm",
     "min": 32,
     "max": 38,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 45,
     "unit": "mm",
     "max": 51,
     "basis": "page",
     "source": "Page on the oriental fire-bellied toad of Peoria Zoo"
    },
    "adultMass": {
     "value": 8000,
     "unit": "mg",
     "min": 5000,
     "max": 12000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Zoo and laboratory experience; the 28 to 57 g often quoted cannot be right."
    },
    "maturityAge": {
     "value": 450,
     "unit": "d",
     "min": 365,
     "max": 730,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 100,
     "unit": "1",
     "min": 38,
     "max": 257,
     "basis": "page",
     "source": "AmphibiaWeb on Bombina orientalis; via the Add-my-Pet species file"
    },
    "broodInterval": {
     "value": 90,
     "unit": "d",
     "min": 60,
     "max": 180,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Two to six clutches in the season (memory), spread over the year."
    },
    "broodTime": {
     "value": 5,
     "unit": "d",
     "min": 3,
     "max": 7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 5500,
     "unit": "d",
     "min": 3000,
     "max": 7300,
     "basis": "page",
     "source": "Page on the oriental fire-bellied toad of Peoria Zoo",
     "note": "About 20 years at most."
    },
    "lengthAtChange": {
     "value": 9.5,
     "unit": "mm",
     "max": 18.3,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Egg and tadpole together take two months (Peoria Zoo); true length 18 mm (Michaels et al. 2014)."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "page",
      "source": "Care article on the oriental fire-bellied toad of the site Marchelache"
     },
     "high": {
      "value": 22,
      "unit": "°C",
      "basis": "page",
      "source": "Care article on the oriental fire-bellied toad of the site Marchelache"
     }
    },
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "page",
      "source": "Care article on the oriental fire-bellied toad of the site Marchelache"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "page",
      "source": "Care article on the oriental fire-bellied toad of the site Marchelache"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.04,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 12,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.65,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.06,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.15,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "amphibians": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "water": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 3600,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "60 × 60 cm for four, half land and half water."
    },
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 600,
     "unit": "cm²",
     "min": 600,
     "max": 900,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "The skin gives off poison when the toad is frightened; in little water it harms other animals.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "law",
     "text": "Not listed by CITES; rules of animal health apply to moving some amphibians in the European Union.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it or its water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "boraras-brigittae": {
   "id": "boraras-brigittae",
   "name": "chili rasboras",
   "about": "One of the smallest fish kept: two centimetres, from black, soft, acid water; eats what drifts.",
   "cautions": [
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Boraras brigittae",
   "group": "fish",
   "leastFounders": {
    "value": 8,
    "unit": "1",
    "min": 6,
    "max": 10,
    "basis": "page",
    "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
   },
   "known": {
    "level": "poorly",
    "note": "Ranges, group and life span come from a care article; growth, mass and egg numbers are recalled or told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 2.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 20,
     "unit": "mm",
     "min": 18,
     "max": 30,
     "basis": "page",
     "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
    },
    "adultMass": {
     "value": 90,
     "unit": "mg",
     "min": 40,
     "max": 150,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 190,
     "unit": "d",
     "min": 150,
     "max": 240,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 12,
     "unit": "1",
     "max": 50,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "At most 50 eggs (encyclopaedia); usual bouts are smaller."
    },
    "broodInterval": {
     "value": 7,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Bouts about once a week."
    },
    "broodTime": {
     "value": 2,
     "unit": "d",
     "basis": "page",
     "source": "Encyclopaedia article on Boraras brigittae, an Italian mirror of Wikipedia"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1500,
     "unit": "d",
     "max": 1825,
     "basis": "page",
     "source": "Husbandry article on Boraras brigittae of the site AquaDebutant",
     "note": "About five years at most."
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.4,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.15,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Parents and others eat most scattered eggs: about a third of those laid hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     },
     "high": {
      "value": 7,
      "unit": "pH",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 6,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 0.5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dGH",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     }
    },
    "conductivity": {
     "low": {
      "value": 30,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "20 mg/L of dissolved solids, at 0.65 mg/L for each µS/cm."
     },
     "high": {
      "value": 230,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "150 mg/L of dissolved solids, at 0.65 mg/L for each µS/cm."
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 23,
      "unit": "°C",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 4,
      "unit": "pH",
      "basis": "page",
      "source": "Husbandry article on Boraras brigittae of the site AquaDebutant"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 0.2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 1.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.75,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.2,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.03,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 40,
     "unit": "L",
     "basis": "page",
     "source": "Husbandry article on Boraras brigittae of the site AquaDebutant",
     "note": "For six."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Its swamp forests are shrinking; many are still caught in the wild.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "bradysia-spp": {
   "id": "bradysia-spp",
   "name": "fungus gnats",
   "about": "Small black flies whose larvae eat mould, rotting leaves and fine roots in wet soil. A nuisance, and food for frogs and geckos.",
   "scientificName": "Bradysia and other Sciaridae",
   "group": "fly",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Stage times and egg numbers are on gardening pages, temperature limits are published for relatives; how wet the soil must be is judged."
   },
   "habitat": "land",
   "mating": "two sexes",
   "brood": "laid",
   "development": "pupa",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Larvae eat in the ground, where light hardly reaches."
   },
   "lifeHistory": {
    "temperature": {
     "value": 24,
     "unit": "°C",
     "basis": "page",
     "source": "Gardening article on the life cycle of fungus gnats"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.4,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the fly weighs 0.001 mg, as an egg does (memory)."
    },
    "lengthAtPuberty": {
     "value": 2.8,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A full-grown larva weighs about four fifths of the usual fly of three millimetres; lengths are those of a fly of that weight."
    },
    "adultLength": {
     "value": 3,
     "unit": "mm",
     "min": 2,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 0.5,
     "unit": "mg",
     "min": 0.2,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 18,
     "unit": "d",
     "min": 17,
     "max": 24,
     "basis": "page",
     "source": "Gardening article on the life cycle of fungus gnats",
     "note": "Larva 12 to 14 d and pupa 3 to 7 d."
    },
    "youngPerBrood": {
     "value": 100,
     "unit": "1",
     "min": 60,
     "max": 300,
     "basis": "page",
     "source": "Page on insects of the LBS pest-control service: 100 to 300 eggs in batches of 2 to 30",
     "note": "All eggs of a fly: she does not eat and has no more."
    },
    "broodInterval": {
     "value": 3,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "All eggs are laid within the first days of the week a fly lives."
    },
    "broodTime": {
     "value": 5,
     "unit": "d",
     "min": 4,
     "max": 6,
     "basis": "page",
     "source": "Gardening article on the life cycle of fungus gnats"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 8,
     "unit": "d",
     "min": 7,
     "max": 10,
     "basis": "page",
     "source": "Page on insects of the LBS pest-control service: grown gnats live 7 to 10 days",
     "note": "Of the fly, from when it comes out of the pupa."
    },
    "pupaTime": {
     "value": 5,
     "unit": "d",
     "min": 3,
     "max": 7,
     "basis": "page",
     "source": "Gardening article on the life cycle of fungus gnats",
     "note": "5 to 6 d on the page of a pest-control service in Hong Kong."
    },
    "wetGround": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "That eggs and larvae die when the upper soil dries out is common practice without a source; no figure of moisture was found."
    }
   },
   "traits": {
    "upkeep": {
     "value": 0.14,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.07,
     "max": 0.28,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Small insects at rest use about a litre of oxygen a kilogram and hour at 25 degrees."
    },
    "leaving": {
     "value": 0.15,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.03,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Flies come to windows and lamps; most that find an opening within a week are gone."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "published",
      "source": "Study of egg output and hatching of Bradysia difformis at several temperatures, abstract; authors not shown in the record read",
      "note": "Egg output and hatching are best at 25 °C."
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "published",
      "source": "Shirvani-Farsani et al., temperature and growth of Lycoriella auripila, a relative, on button mushroom, abstract; journal not shown in the record read"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "published",
      "source": "Shirvani-Farsani et al., temperature and growth of Lycoriella auripila, a relative, on button mushroom, abstract; journal not shown in the record read",
      "note": "Fails at 8 and at 30 °C."
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "soil": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "flies": true,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "groundPerAdult": {
     "value": 0.3,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Pots hold several larvae on a square centimetre."
    }
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Flies pass vents above 1 mm and settle in house plants; let the soil surface dry for a while.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "cambarellus-patzcuarensis": {
   "id": "cambarellus-patzcuarensis",
   "name": "dwarf orange crayfish",
   "about": "A crayfish of three centimetres that breeds in small tanks and leaves most plants alone; takes leftovers, leaves and small or soft animals.",
   "cautions": [
    "One hide for each animal: soft ones after a moult are eaten.",
    "Copper kills crayfish: no copper pipes, medicines or plant food with copper."
   ],
   "scientificName": "Cambarellus patzcuarensis",
   "group": "crayfish",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "min": 2,
    "max": 6,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.35,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass."
   },
   "known": {
    "level": "fairly",
    "note": "Size, temperature, acidity and number of eggs come from a handbook page; growth is measured on a close relative, the rest is told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "twilight",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Dwarf crayfish are seen by day as well."
   },
   "lifeHistory": {
    "temperature": {
     "value": 22,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 3.5,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Size on leaving the mother."
    },
    "adultLength": {
     "value": 32,
     "unit": "mm",
     "min": 20,
     "max": 40,
     "basis": "page",
     "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
    },
    "adultMass": {
     "value": 900,
     "unit": "mg",
     "min": 400,
     "max": 1500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "From the length."
    },
    "maturityAge": {
     "value": 120,
     "unit": "d",
     "min": 90,
     "max": 180,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 35,
     "unit": "1",
     "min": 25,
     "max": 50,
     "basis": "page",
     "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
    },
    "broodInterval": {
     "value": 120,
     "unit": "d",
     "min": 60,
     "max": 180,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "At most four broods in a life of two years (handbook page), spread over the time after maturity."
    },
    "broodTime": {
     "value": 30,
     "unit": "d",
     "min": 21,
     "max": 42,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 700,
     "unit": "d",
     "max": 730,
     "basis": "page",
     "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag",
     "note": "Two years under good conditions."
    }
   },
   "traits": {
    "nitriteMedianLethal": {
     "value": 28,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 9,
     "max": 90,
     "basis": "memory",
     "source": "Gutzmer and Tomasso 1985, Bulletin of Environmental Contamination and Toxicology 34: 369-376 (recalled)",
     "note": "Procambarus clarkii, 96 h."
    },
    "copperMedianLethal": {
     "value": 1000,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 420,
     "max": 3500,
     "basis": "memory",
     "source": "US EPA 1985, Ambient water quality criteria for copper, EPA 440/5-84-031 (recalled)",
     "note": "Procambarus clarkii and other crayfish, 96 h at 50 mg/L hardness: a thousand and more."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 4,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.9,
      "unit": "pH",
      "basis": "page",
      "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "page",
      "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "page",
      "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.17,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 12,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.2,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.3,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.4,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.98,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 600,
     "unit": "cm²",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A tank edge of 30 cm (handbook page) and 20 cm of depth."
    },
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 200,
     "unit": "cm²",
     "min": 100,
     "max": 500,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Keepers give 300 to 500 cm² for each adult; with hides less."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Some countries forbid keeping all or most crayfish that are not native. Ask your authority before you buy.",
     "basis": "page",
     "source": "Lukhaup and Pekny, Invertebrates, sample page on Cambarellus patzcuarensis, Daehne Verlag"
    },
    {
     "kind": "disease",
     "text": "American crayfish can carry crayfish plague, which kills European crayfish; no animal, water, net or plant of theirs may reach open water.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release it or its water outdoors; it climbs cables and filters.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "caridina-cf-cantonensis": {
   "id": "caridina-cf-cantonensis",
   "name": "bee shrimp",
   "about": "Small shrimp of soft, cool, slightly acid water with young like their parents; grazes films, algae and soft leaves.",
   "cautions": [
    "Bee shrimp die above about 27 °C: rooms that grow hot in summer need cooling.",
    "Copper kills shrimp: no copper pipes, medicines or plant food with copper."
   ],
   "scientificName": "Caridina cf. cantonensis",
   "group": "shrimp",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.12,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Thin cuticles hold little mineral."
   },
   "known": {
    "level": "fairly",
    "note": "Growth, age at maturity and life span of the wild species are published; brood size, hardness and acidity are those of breeders of colour strains, and the body mass is recalled."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Grazes all day long; comes to feed at any hour."
   },
   "lifeHistory": {
    "temperature": {
     "value": 23,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 2,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Young are about a twelfth of their mother in length."
    },
    "lengthAtPuberty": {
     "value": 17,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About two thirds of full length, as in other dwarf shrimp."
    },
    "adultLength": {
     "value": 25,
     "unit": "mm",
     "min": 20,
     "max": 28,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "adultMass": {
     "value": 90,
     "unit": "mg",
     "min": 40,
     "max": 120,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 150,
     "unit": "d",
     "min": 120,
     "max": 270,
     "basis": "published",
     "source": "Yam and Dudgeon 2005, Freshwater Biology 50: 2114-2128, abstract",
     "note": "Four months in the fastest stream, seven and nine in two slower ones."
    },
    "youngPerBrood": {
     "value": 22,
     "unit": "1",
     "min": 15,
     "max": 35,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 42,
     "unit": "d",
     "min": 35,
     "max": 50,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Wild females bear one or two broods a year (Yam and Dudgeon 2005)."
    },
    "broodTime": {
     "value": 31,
     "unit": "d",
     "min": 28,
     "max": 35,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 600,
     "unit": "d",
     "min": 515,
     "max": 670,
     "basis": "published",
     "source": "Yam and Dudgeon 2005, Freshwater Biology 50: 2114-2128, abstract",
     "note": "17 to 22 months in streams."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 1,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "conductivity": {
     "low": {
      "value": 170,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "110 mg/L of dissolved solids, at 0.65 mg/L for each µS/cm."
     },
     "high": {
      "value": 250,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "160 mg/L of dissolved solids, at 0.65 mg/L for each µS/cm."
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 14,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "No special rule is known; check where you live.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Nearly all fish, crabs, crayfish and newts eat shrimp or their young.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "caridina-multidentata": {
   "id": "caridina-multidentata",
   "name": "Amano shrimp",
   "about": "The strongest algae grazer among the small shrimp. Females carry thousands of eggs in fresh water, but the larvae need sea water: the group never grows by itself.",
   "cautions": [
    "Copper kills shrimp: no copper pipes, medicines or plant food with copper."
   ],
   "scientificName": "Caridina multidentata",
   "group": "shrimp",
   "leastFounders": {
    "value": 5,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.12,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Thin cuticles hold little mineral."
   },
   "known": {
    "level": "fairly",
    "note": "Egg time and the needs of the larvae are published; size, mass and egg numbers are recalled."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "development": "brackish larvae",
   "active": {
    "when": "always",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Grazes all day long; comes to feed at any hour."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Hamano and Hayashi 1992, Researches on Crustacea 21: 1-13, abstract"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 1.8,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 25,
     "unit": "mm",
     "basis": "published",
     "source": "Study of 143 Caridina japonica from Yaso-tani, Kii, in a Japanese journal, abstract; author and year not shown in the record read",
     "note": "The smallest shrimp with eggs; males stay about 10 mm shorter than females."
    },
    "adultLength": {
     "value": 38,
     "unit": "mm",
     "min": 25,
     "max": 50,
     "basis": "page",
     "source": "Encyclopaedia article on Caridina multidentata, a mirror of Wikipedia",
     "note": "25 to 35 mm; large females in tanks reach 45 to 50 mm."
    },
    "adultMass": {
     "value": 500,
     "unit": "mg",
     "min": 200,
     "max": 900,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 300,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "After the change to a small shrimp; no figure found."
    },
    "youngPerBrood": {
     "value": 2000,
     "unit": "1",
     "min": 1000,
     "max": 3000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 47,
     "unit": "d",
     "min": 40,
     "max": 55,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 40,
     "unit": "d",
     "basis": "published",
     "source": "Hamano and Hayashi 1992, Researches on Crustacea 21: 1-13, abstract"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1000,
     "unit": "d",
     "min": 730,
     "basis": "published",
     "source": "Hamano and Hayashi 1992, Researches on Crustacea 21: 1-13, abstract",
     "note": "Most males die within 730 d of the change, many females live longer."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.3,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.98,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 40,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For five."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild; no special rule is known.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Adults climb out of open tanks and dry up; close gaps round hoses and cables.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "collembola-tropical-spp": {
   "id": "collembola-tropical-spp",
   "name": "tropical springtails",
   "about": "Springtails of warm boxes that eat mould and leftovers and feed dart frogs. Sold without a sure name.",
   "scientificName": "Collembola, as sold: Sinella, Ceratophysella and others",
   "group": "springtail",
   "leastFounders": {
    "value": 20,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "What is sold is not named to species; ranges are borrowed from a relative, growth and broods are told by keepers."
   },
   "habitat": "land",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Lives in the dark of litter."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 1.5,
     "unit": "mm",
     "min": 0.8,
     "max": 2.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "adultMass": {
     "value": 0.12,
     "unit": "mg",
     "min": 0.02,
     "max": 0.3,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 20,
     "unit": "d",
     "min": 14,
     "max": 25,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 20,
     "unit": "1",
     "min": 10,
     "max": 50,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 9,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "As in white springtails, a little slower."
    },
    "broodTime": {
     "value": 7,
     "unit": "d",
     "min": 5,
     "max": 10,
     "basis": "page",
     "source": "Web page on the time springtails take to reproduce of the site Biology Insights"
    },
    "femaleShare": {
     "value": 0.6,
     "unit": "1",
     "min": 0.5,
     "max": 1,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 150,
     "unit": "d",
     "min": 90,
     "max": 300,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "traits": {
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Springtails lay fewer eggs the less ground each has (Green 1962, 1964, for Folsomia); that half are left at the ground claimed is judgement."
    },
    "humidityLow": {
     "value": 95,
     "unit": "%",
     "distribution": "normal",
     "spread": 1,
     "min": 91,
     "max": 98,
     "basis": "published",
     "source": "Bayley and Holmstrup 1999, Science 285: 1909-1911; abstract",
     "note": "Springtails of the ground as Folsomia; those of the surface bear a little less moist air."
    },
    "humidityMargin": {
     "value": 3.5,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 1.94,
     "max": 6.3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.97,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 85,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 7.9,
      "unit": "°C",
      "basis": "published",
      "source": "Choi, Ryoo and Kim 2002, Pedobiologia 46: 548-557, abstract; on Paronychiurus kimi, a relative"
     },
     "high": {
      "value": 30.3,
      "unit": "°C",
      "basis": "published",
      "source": "Choi, Ryoo and Kim 2002, Pedobiologia 46: 548-557, abstract; on Paronychiurus kimi, a relative"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "biofilm": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.48,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.01,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.01,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 50,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 0.3,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "As for white springtails: cultures slow down beyond a few on a square centimetre."
    }
   },
   "risks": [
    {
     "kind": "escape",
     "text": "No mesh holds springtails; those that stray indoors dry out and do no harm.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "corydoras-habrosus": {
   "id": "corydoras-habrosus",
   "name": "dwarf corydoras",
   "about": "Bottom fish of three centimetres that sifts fine sand in groups and fetches air at the surface.",
   "cautions": [
    "Fine sand only: gravel wears its barbels down.",
    "Its fin spines are sharp: use a cup, not a net."
   ],
   "scientificName": "Corydoras habrosus",
   "group": "catfish",
   "leastFounders": {
    "value": 8,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "No measured values were found; all is recalled or told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "twilight",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Forages by day too, most at dusk and dawn."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 4,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 30,
     "unit": "mm",
     "min": 25,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 500,
     "unit": "mg",
     "min": 300,
     "max": 700,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 240,
     "unit": "d",
     "min": 180,
     "max": 300,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 12,
     "unit": "1",
     "min": 5,
     "max": 20,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 14,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 4,
     "unit": "d",
     "min": 3,
     "max": 5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1600,
     "unit": "d",
     "min": 1000,
     "max": 2200,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.25,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.1,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Stuck singly on leaves, many are eaten; about a third of those laid hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.4,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.4,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 2,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice; it also swallows air."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "biofilm": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.35,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.25,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.35,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1800,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "water": {
     "value": 54,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "handling",
     "text": "Spines of the fins lock and can prick fingers; wash the wound.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "cyclops-spp": {
   "id": "cyclops-spp",
   "name": "copepods",
   "about": "Comes along by itself: small hoppers in open water and on glass that eat algae and one another's larvae, and feed small fish.",
   "scientificName": "Cyclops, numbers of C. vicinus",
   "group": "copepod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "min": 5,
    "max": 20,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Development of one species is measured from 2.5 to 25 °C; which species a tank holds is never known, and warm-water ones are faster."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured"
   },
   "lifeHistory": {
    "temperature": {
     "value": 15,
     "unit": "°C",
     "basis": "published",
     "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.207,
     "unit": "mm",
     "basis": "published",
     "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 1.15,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Copepods stop growing when grown up, which is not computed."
    },
    "adultLength": {
     "value": 1.6,
     "unit": "mm",
     "min": 1.2,
     "max": 1.63,
     "basis": "published",
     "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file"
    },
    "adultMass": {
     "value": 0.07,
     "unit": "mg",
     "min": 0.03,
     "max": 0.1,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 26.6,
     "unit": "d",
     "basis": "published",
     "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file",
     "note": "8.6 d as nauplius and 18 d as copepodite."
    },
    "youngPerBrood": {
     "value": 50,
     "unit": "1",
     "min": 20,
     "max": 110,
     "basis": "published",
     "source": "Hopp, Maier and Bleher 1997, Freshwater Biology 38: 289-300; via the Add-my-Pet species file"
    },
    "broodInterval": {
     "value": 4.6,
     "unit": "d",
     "min": 3,
     "max": 6,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "3 d at 19 °C (Hopp et al. 1997), with the activation energy below."
    },
    "broodTime": {
     "value": 3.7,
     "unit": "d",
     "basis": "published",
     "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 90,
     "unit": "d",
     "min": 77,
     "max": 190,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Stage times of Vijverberg 1980 and 44 to 51 d as an adult at 19 °C (Hopp et al. 1997)."
    }
   },
   "traits": {
    "activationEnergy": {
     "value": 0.78,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.62,
     "max": 0.94,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Arrhenius fit to egg times from 2.5 to 25 °C (Vijverberg 1980)."
    },
    "broodActivationEnergy": {
     "value": 0.78,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.62,
     "max": 0.94,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Arrhenius fit to egg times from 2.5 to 25 °C (Vijverberg 1980)."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 14,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.2,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "Between water fleas and shrimp."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 2.5,
      "unit": "°C",
      "basis": "published",
      "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "published",
      "source": "Vijverberg 1980, Freshwater Biology 10: 317-340; via the Add-my-Pet species file",
      "note": "Studied up to 25 °C."
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "suspended algae": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.05,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 0.4,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "plankton",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "danio-margaritatus": {
   "id": "danio-margaritatus",
   "name": "celestial pearl danios",
   "about": "Small, spotted fish of cool, clear hill ponds among plants; males claim a little space each.",
   "cautions": [
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Danio margaritatus",
   "group": "fish",
   "leastFounders": {
    "value": 8,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "Only size and home are in print here; the rest is told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 24,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "standard length",
    "lengthAtBirth": {
     "value": 3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 22,
     "unit": "mm",
     "min": 20,
     "max": 30,
     "basis": "page",
     "source": "Encyclopaedia article on Danio margaritatus, a mirror of Wikipedia"
    },
    "adultMass": {
     "value": 200,
     "unit": "mg",
     "min": 120,
     "max": 300,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 140,
     "unit": "d",
     "min": 100,
     "max": 180,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 12,
     "unit": "1",
     "min": 5,
     "max": 20,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 7,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Bouts about once a week."
    },
    "broodTime": {
     "value": 3,
     "unit": "d",
     "min": 2,
     "max": 4,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1300,
     "unit": "d",
     "min": 900,
     "max": 1800,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.4,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.15,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Parents and others eat most scattered eggs: about a third of those laid hatch."
    },
    "nitriteMedianLethal": {
     "value": 74,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 22.5,
     "max": 220,
     "basis": "published",
     "source": "Voslářová et al. 2006, Acta Veterinaria Brno 75: 107-113; abstract",
     "note": "Zebrafish of two to three months, of the same genus, 96 h at 19 mg/L chloride: 242 mg/L of nitrite."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.64,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.26,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1100,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "45 cm of length."
    },
    "water": {
     "value": 40,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 40,
     "unit": "cm²",
     "min": 20,
     "max": 200,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Males claim 200 to 400 cm² when they court; others share."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "From a small highland above 1000 m; the trade lives mostly on bred fish.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "daphnia-magna": {
   "id": "daphnia-magna",
   "name": "water fleas",
   "about": "Filters algae and bacteria from open water and clears green tanks; every fish eats it. A test animal of ecotoxicology.",
   "cautions": [
    "Cultures crash when overfed or when a hot day takes the oxygen."
   ],
   "scientificName": "Daphnia magna",
   "group": "water flea",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Growth, maturity, young and life span at several temperatures and food levels are measured; hardness and acidity are those of keepers."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Filters at all hours; wanders up and down with the light in deep water."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Duel 1988, times to maturity at constant temperatures; via the Add-my-Pet species file"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 1,
     "unit": "mm",
     "basis": "published",
     "source": "Preuss et al. 2009, Ecological Modelling 220: 310-329; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 2.5,
     "unit": "mm",
     "min": 2.2,
     "max": 2.8,
     "basis": "page",
     "source": "Daphnia magna, web page of the theoretical biology group of the VU Amsterdam"
    },
    "adultLength": {
     "value": 4.2,
     "unit": "mm",
     "min": 2.5,
     "max": 5.2,
     "basis": "derived",
     "source": "Daphnia magna, web page of the theoretical biology group of the VU Amsterdam",
     "note": "Well-fed females reach 5 mm; 2.5 to 5.2 mm in MacArthur and Baillie 1929."
    },
    "adultMass": {
     "value": 7,
     "unit": "mg",
     "min": 3,
     "max": 12,
     "basis": "derived",
     "source": "Elendt 1989, Archiv für Hydrobiologie 116: 415-433; via the Add-my-Pet species file",
     "note": "0.0066 mg dry at birth, in proportion to length cubed."
    },
    "dryPart": {
     "value": 0.07,
     "unit": "g/g",
     "min": 0.05,
     "max": 0.09,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 6.6,
     "unit": "d",
     "min": 5.5,
     "max": 7.3,
     "basis": "published",
     "source": "Duel 1988, times to maturity at constant temperatures; via the Add-my-Pet species file"
    },
    "youngPerBrood": {
     "value": 52,
     "unit": "1",
     "min": 20,
     "max": 65,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "138 young by day 21 at 2 mg C/L (Preuss et al. 2009) are five broods of some 27 by mothers of about 3.2 mm that still grow; what those eat makes 52 in full-grown ones. Sixty are not exceptional in the largest (VU Amsterdam)."
    },
    "broodInterval": {
     "value": 3,
     "unit": "d",
     "min": 2.5,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 3,
     "unit": "d",
     "min": 2.5,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Males appear only when it grows crowded or cold."
    },
    "lifespan": {
     "value": 65,
     "unit": "d",
     "min": 45,
     "max": 99,
     "basis": "published",
     "source": "MacArthur and Baillie 1929, Journal of Experimental Zoology 53: 221-242; via the Add-my-Pet species file"
    }
   },
   "traits": {
    "eggPerNewborn": {
     "value": 1.24,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 1.05,
     "max": 1.5,
     "basis": "derived",
     "source": "Elendt 1989, Archiv für Hydrobiologie 116: 415-433; via the Add-my-Pet species file",
     "note": "Eggs of 0.0082 mg dry, newborns of 0.0066 mg."
    },
    "activationEnergy": {
     "value": 0.6,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.75,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Arrhenius fit to times to maturity of 16.5, 9.1, 6.6 and 4.7 d at 10, 15, 20 and 25 °C (Duel 1988)."
    },
    "broodActivationEnergy": {
     "value": 0.6,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.75,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "As for growth."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Belongs to the weight of floating algae above."
    },
    "copperMedianLethal": {
     "value": 21,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 9,
     "max": 70,
     "basis": "memory",
     "source": "US EPA 1985, Ambient water quality criteria for copper, EPA 440/5-84-031 (recalled)",
     "note": "Species mean at 50 mg/L hardness; 48 h."
    },
    "saltHigh": {
     "value": 5.4,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 0.81,
     "min": 3.24,
     "max": 7.56,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "3 g/L; half die at 5 to 6 g/L of table salt in 48 h."
    },
    "upkeep": {
     "value": 0.2,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.25,
     "min": 0.12,
     "max": 0.35,
     "basis": "derived",
     "source": "Evers and Kooijman 1989, Netherlands Journal of Zoology 39: 56-78; via the Add-my-Pet species file",
     "note": "Oxygen use of 0.5 µg/h at 2 mm and 3.8 µg/h at 4 mm, 20 °C, one carbon burnt an oxygen: 0.20 of the carbon of the body above. Twice the standard metabolism of its size would be 0.17."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Crowding lowers the broods of water fleas whatever the food (Gergs et al. 2014); that half are left at the crowding density is judgement."
    },
    "filtering": {
     "value": 1,
     "unit": "1",
     "basis": "published",
     "source": "Jeschke, Kopp and Tollrian 2004, Biological Reviews 79: 337-349, recalled",
     "note": "Filters without choosing: the intake of Gergs et al. 2014 rises along a line to twice the half saturation and stays there."
    },
    "preferenceForSuspended": {
     "value": 30,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 12,
     "max": 75,
     "basis": "derived",
     "source": "Gergs, Preuss and Palmqvist 2014, PLoS ONE 9: e91503; via the Add-my-Pet species file",
     "note": "Food counts as in a layer of 10 cm; with the half saturation below intake is then half at 0.2 mg C/L."
    },
    "efficiencyOnSuspended": {
     "value": 0.8,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.6,
     "max": 0.92,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.5 to 0.8 of green algae."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 4,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.42,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.42,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "No effect in 21 d, remembered from Gersich and Hopkins 1986."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Forms haemoglobin."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 1,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "suspended algae": {
     "value": 0.73,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.12,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "plankton",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 10,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "disease",
     "text": "Cultures bring mites and moulds along; look at them before you feed from them.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "dendrobates-tinctorius": {
   "id": "dendrobates-tinctorius",
   "name": "dyeing dart frogs",
   "about": "Ground-living frog, active by day, that eats springtails and fruit flies all day long. Lays on leaves; the father carries the tadpoles to water. Cannot swim well.",
   "cautions": [
    "A poor swimmer: water deeper than 2 cm needs ramps everywhere.",
    "Females fight other females; keep a pair or a trio."
   ],
   "scientificName": "Dendrobates tinctorius",
   "group": "dart frog",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "min": 2,
    "max": 3,
    "basis": "page",
    "source": "Care guide to Dendrobates tinctorius of a maker of terrarium equipment"
   },
   "known": {
    "level": "fairly",
    "note": "Size, clutch and life span come from care guides; growth, mass and pace of breeding are told by keepers. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 8,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 25 mg, as a hatchling does (memory)."
    },
    "lengthAtPuberty": {
     "value": 36,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four fifths of full length."
    },
    "adultLength": {
     "value": 45,
     "unit": "mm",
     "min": 35,
     "max": 70,
     "basis": "page",
     "source": "Care guide to Dendrobates tinctorius of a maker of terrarium equipment"
    },
    "adultMass": {
     "value": 4500,
     "unit": "mg",
     "min": 3000,
     "max": 7000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 400,
     "unit": "d",
     "min": 300,
     "max": 540,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 6,
     "unit": "1",
     "min": 5,
     "max": 10,
     "basis": "page",
     "source": "Pages on the breeding of poison dart frogs of The Environmental Literacy Council",
     "note": "2 to 25 over the family."
    },
    "broodInterval": {
     "value": 16,
     "unit": "d",
     "min": 10,
     "max": 30,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "10 to 21 d in good condition."
    },
    "broodTime": {
     "value": 14,
     "unit": "d",
     "min": 12,
     "max": 16,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 3650,
     "unit": "d",
     "min": 3000,
     "max": 5500,
     "basis": "page",
     "source": "Care guide to Dendrobates tinctorius of a maker of terrarium equipment",
     "note": "10 to 15 years."
    },
    "lengthAtChange": {
     "value": 15,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Tadpoles take 55 to 80 d."
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.05,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.02,
     "max": 0.15,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Many clutches fail or are eaten: about half of the eggs hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "page",
      "source": "Care guide to Dendrobates tinctorius of a maker of terrarium equipment",
      "note": "Many keepers stay at 22 to 26 °C."
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "page",
      "source": "Care guide to Dendrobates tinctorius of a maker of terrarium equipment"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 0.2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 4,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.8,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 2500,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "60 × 45 cm for a pair."
    },
    "height": {
     "value": 45,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 1000,
     "unit": "cm²",
     "min": 900,
     "max": 2500,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Listed in CITES Appendix II: keep the papers that come with the frog.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "handling",
     "text": "Frogs bred in captivity on flour-fed flies carry no alkaloids; wild ones do. Handle neither more than needed: the skin takes up everything.",
     "basis": "page",
     "source": "Pages on captive-bred dart frogs of The Environmental Literacy Council"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "welfare",
     "text": "Dust prey with calcium and vitamin D; without it bones soften.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "dryophytes-cinereus": {
   "id": "dryophytes-cinereus",
   "name": "American green tree frogs",
   "about": "Climbs among leaves and glass, calls loudly at night and hunts flying insects; seldom bred in small enclosures.",
   "cautions": [
    "It climbs dry glass and leaves through any gap.",
    "Males call loudly on summer nights."
   ],
   "scientificName": "Dryophytes (Hyla) cinereus",
   "group": "tree frog",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Size, egg and tadpole time and age at breeding are in print; mass and growth are recalled. That it breeds at all in a small box is doubtful: one clutch a year is assumed. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 3.1,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 2 mg, as a hatchling does (memory)."
    },
    "lengthAtPuberty": {
     "value": 40,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four fifths of full length."
    },
    "adultLength": {
     "value": 50,
     "unit": "mm",
     "min": 32,
     "max": 64,
     "basis": "page",
     "source": "Encyclopedia of Life and Animal Diversity Web on Hyla cinerea"
    },
    "adultMass": {
     "value": 8000,
     "unit": "mg",
     "min": 4000,
     "max": 12000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 365,
     "unit": "d",
     "basis": "page",
     "source": "Guide to the green tree frog of the site Biodiversity4All"
    },
    "youngPerBrood": {
     "value": 250,
     "unit": "1",
     "max": 400,
     "basis": "page",
     "source": "Guide to the green tree frog of the site Biodiversity4All",
     "note": "400 is the most."
    },
    "broodInterval": {
     "value": 365,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Needs a pond, a rest in winter and rain: at best once a year in an enclosure."
    },
    "broodTime": {
     "value": 5,
     "unit": "d",
     "min": 4,
     "max": 6,
     "basis": "page",
     "source": "Encyclopaedia article on the American green tree frog, a German mirror"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1900,
     "unit": "d",
     "max": 2190,
     "basis": "page",
     "source": "Encyclopedia of Life and Animal Diversity Web on Hyla cinerea",
     "note": "2190 d is the high end in captivity."
    },
    "lengthAtChange": {
     "value": 10.8,
     "unit": "mm",
     "max": 17,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Tadpoles take 28 to 60 d (AmphibiaWeb)."
    }
   },
   "traits": {
    "saltHigh": {
     "value": 8.9,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.33,
     "min": 5.34,
     "max": 12.46,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "5 g/L: coastal populations breed in slightly brackish water."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 90,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 14,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 14,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.01,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.37,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 20,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.93,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.03,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "amphibians": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "reptiles": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "water": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.75,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 2000,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For two or three."
    },
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "A shallow dish is enough."
    },
    "height": {
     "value": 60,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 700,
     "unit": "cm²",
     "min": 500,
     "max": 1500,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Introduced in Puerto Rico; never release it.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "handling",
     "text": "Skin secretions sting eyes and wounds; wash hands.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "enchytraeus-albidus": {
   "id": "enchytraeus-albidus",
   "name": "white worms",
   "about": "Worm of cool, wet soil that turns leftovers and rotting leaves into crumbs; rich food for fish, newts and frogs. Dies in warm rooms.",
   "scientificName": "Enchytraeus albidus",
   "group": "soil worm",
   "leastFounders": {
    "value": 50,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Growth, cocoons and survival of eggs and young are published; mass, food intake and life span are recalled."
   },
   "habitat": "land",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Lives in the ground."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 4.3,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs a hundredth of it."
    },
    "lengthAtPuberty": {
     "value": 13.5,
     "unit": "mm",
     "min": 13,
     "max": 14,
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "adultLength": {
     "value": 20,
     "unit": "mm",
     "min": 13,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 8,
     "unit": "mg",
     "min": 3,
     "max": 15,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.18,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 28,
     "unit": "d",
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "youngPerBrood": {
     "value": 6,
     "unit": "1",
     "min": 0,
     "max": 22,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "0 to 22 eggs a cocoon, of which 50 to 60 % develop (Learner 1972)."
    },
    "broodInterval": {
     "value": 6,
     "unit": "d",
     "min": 3,
     "max": 9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.8 to 2.6 cocoons a week in three relatives (Learner 1972)."
    },
    "broodTime": {
     "value": 13,
     "unit": "d",
     "min": 10,
     "max": 20,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Hermaphrodite; a partner is needed for some clutches, which is not computed."
    },
    "lifespan": {
     "value": 250,
     "unit": "d",
     "min": 150,
     "max": 365,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "humidityLow": {
     "value": 96,
     "unit": "%",
     "distribution": "normal",
     "spread": 0.8,
     "min": 92,
     "max": 99,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Without skin against drying: dead within hours outside moist ground."
    },
    "humidityMargin": {
     "value": 3,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.67,
     "max": 5.4,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.99,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 1,
      "unit": "°C",
      "basis": "published",
      "source": "Reynoldson 1943, Annals of Applied Biology 30: 60-66, abstract"
     },
     "high": {
      "value": 25,
      "unit": "°C",
      "basis": "published",
      "source": "Reynoldson 1943, Annals of Applied Biology 30: 60-66, abstract"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "It lives in the pores of wet soil."
     }
    }
   },
   "diet": {
    "biofilm": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "soil": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "worms",
   "place": {
    "water": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.18,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.8,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 100,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 0.5,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures hold some on each square centimetre."
    }
   },
   "risks": [
    {
     "kind": "disease",
     "text": "Cultures bring mites and moulds along; look at them before you feed from them.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "enchytraeus-buchholzi": {
   "id": "enchytraeus-buchholzi",
   "name": "Grindal worms",
   "about": "Small soil worm of room warmth that clears leftovers in wet soil and feeds small fish and frogs.",
   "scientificName": "Enchytraeus buchholzi",
   "group": "soil worm",
   "leastFounders": {
    "value": 50,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Growth, cocoons and lifetime eggs are published; mass and food intake are recalled."
   },
   "habitat": "land",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Lives in the ground."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 1.6,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs about a hundredth of it."
    },
    "lengthAtPuberty": {
     "value": 3.5,
     "unit": "mm",
     "min": 3,
     "max": 4,
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "adultLength": {
     "value": 7,
     "unit": "mm",
     "min": 4,
     "max": 10,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 0.5,
     "unit": "mg",
     "min": 0.2,
     "max": 1,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.18,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 16,
     "unit": "d",
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "youngPerBrood": {
     "value": 3.5,
     "unit": "1",
     "min": 1,
     "max": 9,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "6.4 eggs a cocoon (Zhao and Ma 2025), of which 50 to 60 % develop (Learner 1972)."
    },
    "broodInterval": {
     "value": 2.7,
     "unit": "d",
     "min": 2.7,
     "max": 5,
     "basis": "published",
     "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
    },
    "broodTime": {
     "value": 11,
     "unit": "d",
     "min": 8,
     "max": 14,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Hermaphrodite; a partner is needed for some clutches, which is not computed."
    },
    "lifespan": {
     "value": 300,
     "unit": "d",
     "min": 280,
     "max": 400,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "10 to 13 generations of about a month (Zhao and Ma 2025)."
    }
   },
   "traits": {
    "humidityLow": {
     "value": 96,
     "unit": "%",
     "distribution": "normal",
     "spread": 0.8,
     "min": 92,
     "max": 99,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Without skin against drying: dead within hours outside moist ground."
    },
    "humidityMargin": {
     "value": 3,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.67,
     "max": 5.4,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.99,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "published",
      "source": "Learner 1972, Annals of Applied Biology 70: 251-266, abstract"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "It lives in the pores of wet soil."
     }
    }
   },
   "diet": {
    "biofilm": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.42,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "soil": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "worms",
   "place": {
    "water": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.18,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.8,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 30,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 0.05,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures hold tens on each square centimetre."
    }
   },
   "risks": [
    {
     "kind": "disease",
     "text": "Cultures bring mites and moulds along; look at them before you feed from them.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "folsomia-candida": {
   "id": "folsomia-candida",
   "name": "white springtails",
   "about": "Lives in litter and soil, eats mould, fungi and leftovers, and needs no mate. A test animal of soil science.",
   "scientificName": "Folsomia candida",
   "group": "springtail",
   "leastFounders": {
    "value": 20,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "A culture starts from one; twenty make it quick."
   },
   "known": {
    "level": "well",
    "note": "Development, egg output and survival at several temperatures are published; what it eats of which food is recalled."
   },
   "habitat": "land",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Blind, and lives in the dark of litter and soil."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.31,
     "unit": "mm",
     "basis": "published",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 1.3,
     "unit": "mm",
     "basis": "derived",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file",
     "note": "Length at 18 d on a curve to 2.38 mm."
    },
    "adultLength": {
     "value": 2.28,
     "unit": "mm",
     "basis": "published",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file",
     "note": "2.38 mm is approached with ample food, 1.78 mm when fed one day in five."
    },
    "adultMass": {
     "value": 0.28,
     "unit": "mg",
     "basis": "published",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file"
    },
    "dryPart": {
     "value": 0.29,
     "unit": "g/g",
     "basis": "published",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file"
    },
    "maturityAge": {
     "value": 16.5,
     "unit": "d",
     "basis": "published",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum",
     "note": "16 to 17 d in one work, 21 to 24 d to the sixth instar in another."
    },
    "youngPerBrood": {
     "value": 82,
     "unit": "1",
     "basis": "derived",
     "source": "Hamda 2014, PhD thesis, via the Add-my-Pet species file",
     "note": "Eleven eggs a day between day 40 (220 so far) and day 80 (657); batches of 30 to 50 are reported elsewhere (Fountain and Hopkin 2005)."
    },
    "broodInterval": {
     "value": 7.5,
     "unit": "d",
     "basis": "published",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum"
    },
    "broodTime": {
     "value": 9,
     "unit": "d",
     "basis": "published",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "published",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum"
    },
    "lifespan": {
     "value": 200,
     "unit": "d",
     "basis": "derived",
     "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers’ forum",
     "note": "Mean 240 d at 15 °C and 111 d at 24 °C."
    }
   },
   "traits": {
    "activationEnergy": {
     "value": 0.6,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.45,
     "max": 0.8,
     "basis": "derived",
     "source": "Arrhenius fit to egg times at 14, 15, 20 and 25 °C, see the note",
     "note": "17, 15, 9 and 7 d (Fountain and Hopkin 2005 and others)."
    },
    "broodActivationEnergy": {
     "value": 0.6,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.45,
     "max": 0.8,
     "basis": "derived",
     "source": "Arrhenius fit to egg times at 14, 15, 20 and 25 °C, see the note",
     "note": "17, 15, 9 and 7 d (Fountain and Hopkin 2005 and others)."
    },
    "upkeep": {
     "value": 0.058,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.25,
     "min": 0.035,
     "max": 0.1,
     "basis": "derived",
     "source": "Stam, van de Leemkule and Ernsting 1996, Oecologia 107: 283-292; via the Add-my-Pet species file",
     "note": "0.03 to 0.13 µL oxygen an hour at 18.5 °C in animals of 0.06 to 0.24 mg, one carbon burnt an oxygen: 0.049 to 0.054 of the carbon of the body above, brought to 20 °C."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Springtails lay fewer eggs the less ground each has (Green 1962, 1964, for Folsomia); that half are left at the ground claimed is judgement."
    },
    "timeAfloat": {
     "value": 20,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 7,
     "max": 50,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Floats on water and drowns only slowly."
    },
    "humidityLow": {
     "value": 97,
     "unit": "%",
     "distribution": "normal",
     "spread": 0.7,
     "min": 93,
     "max": 99.5,
     "basis": "published",
     "source": "Bayley and Holmstrup 1999, Science 285: 1909-1911; abstract",
     "note": "Active down to 98.9 % and below; survival below 90 % is limited to hours. At 90 % half are dead in half a day."
    },
    "humidityMargin": {
     "value": 2.5,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.39,
     "max": 4.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.98,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 3,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "published",
      "source": "Fountain and Hopkin 2005, Annual Review of Entomology 50: 201-222, as quoted on a keepers' forum",
      "note": "No eggs hatch above 28 °C."
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "litter": {
     "value": 0.1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "fungi": {
     "value": 0.55,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "feed": {
     "value": 0.03,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carrion": {
     "value": 0.02,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "land": {
     "value": 0.45,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "burrow": {
     "value": 0.45,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 50,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 0.3,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures slow down beyond a few full-grown animals on a square centimetre."
    }
   },
   "risks": [
    {
     "kind": "escape",
     "text": "No mesh holds springtails; those that stray indoors dry out and do no harm.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "gammarus-pulex": {
   "id": "gammarus-pulex",
   "name": "freshwater amphipod",
   "about": "Amphipod of cool, well-aired streams that shreds leaves; clean-up crew of cold water only.",
   "cautions": [
    "Not for warm rooms: above 20 °C it weakens and dies.",
    "Takes small shrimp while they moult and its own young.",
    "Native in most of Europe; do not move it between waters, and do not release it.",
    "Wash hands after work in the water; keep it away from mouth and open wounds."
   ],
   "scientificName": "Gammarus pulex",
   "group": "amphipod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.2,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass."
   },
   "known": {
    "level": "well",
    "note": "Growth, incubation at four temperatures and brood output are measured; the answer to warm water is the weakest part that matters, since rooms are warmer than its streams."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Drifts and forages mostly in the dark."
   },
   "traits": {
    "referenceTemperature": {
     "value": 15,
     "unit": "°C",
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file"
    },
    "dryMassPerCube": {
     "value": 0.0027,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 0.002,
     "max": 0.0037,
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file",
     "note": "Wet 5 mg at 7.2 mm and 51 mg at 15.6 mm, taken as one fifth dry (memory)."
    },
    "lengthAtBirth": {
     "value": 2.15,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.12,
     "min": 1.8,
     "max": 2.5,
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file",
     "note": "0.135 mg wet at release; 2.0 mm in McCahon and Pascoe 1988."
    },
    "lengthAtPuberty": {
     "value": 7.2,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.4,
     "min": 6.2,
     "max": 8.4,
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file",
     "note": "5 mg wet; 8 mm in McCahon and Pascoe 1988."
    },
    "lengthAtEnd": {
     "value": 19.3,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.8,
     "min": 16.5,
     "max": 22,
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file",
     "note": "Line through the cube roots of mass at age 104 to 413 d; males reach 20 mm."
    },
    "growthRate": {
     "value": 0.0038,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 0.0026,
     "max": 0.0055,
     "basis": "published",
     "source": "Sutcliffe et al. 1981, Freshwater Biology 11: 183-214; via the Add-my-Pet species file"
    },
    "shareToSoma": {
     "value": 0.85,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.77,
     "max": 0.92,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Gives up to 22 young in 30 days at 15 °C (Sutcliffe et al. 1981)."
    },
    "eggPerNewborn": {
     "value": 1.4,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 1.15,
     "max": 1.8,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.35,
     "max": 0.65,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 20.6,
     "unit": "d",
     "distribution": "normal",
     "spread": 1.2,
     "min": 17,
     "max": 25,
     "basis": "published",
     "source": "Nilsson 1977, Oikos 29: 93-98; via the Add-my-Pet species file"
    },
    "broodInterval": {
     "value": 25,
     "unit": "d",
     "distribution": "normal",
     "spread": 2.5,
     "min": 18,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingCoolest": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 0,
     "max": 6,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingWarmest": {
     "value": 22,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 19.5,
     "max": 25,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "activationEnergy": {
     "value": 0.7,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.5,
     "max": 0.95,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodActivationEnergy": {
     "value": 0.77,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.65,
     "max": 0.9,
     "basis": "published",
     "source": "Nilsson 1977, Oikos 29: 93-98; via the Add-my-Pet species file",
     "note": "Line through incubation at 1, 5, 10 and 15 °C."
    },
    "heatLimit": {
     "value": 23.5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 21,
     "max": 27,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.085,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.007,
     "min": 0.06,
     "max": 0.11,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.012,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.006,
     "max": 0.018,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.35,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.15,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.1 to 0.3 of its own dry mass a day in leaves at 15 °C for adults."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 0.4,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 1,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.5,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.2,
     "max": 1.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.3,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.08,
     "max": 1,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A shredder of softened leaves; much litter lies deep, so its weight per amount is below one."
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.02,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.002,
     "max": 0.1,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.35,
     "max": 0.75,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnDetritus": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnLitter": {
     "value": 0.2,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.08,
     "max": 0.35,
     "basis": "memory",
     "source": "Marchant and Hynes 1981, Freshwater Biology 11: 27-36; abstract",
     "note": "0.10 measured on decaying maple in a relative (Gammarus pseudolimnaeus); softened, fungus-rich leaves give more."
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.1,
     "max": 0.45,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 450,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 320,
     "max": 620,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "About 470 d at 13 °C, personal communication in the Add-my-Pet collection."
    },
    "adultLoss": {
     "value": 0.002,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.0007,
     "max": 0.006,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "juvenileLoss": {
     "value": 0.005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.002,
     "max": 0.012,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodLoss": {
     "value": 0.005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.001,
     "max": 0.02,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 0.5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.3,
     "min": 0,
     "max": 1.5,
     "basis": "published",
     "source": "Nilsson 1977, Oikos 29: 93-98; via the Add-my-Pet species file"
    },
    "temperatureHigh": {
     "value": 20,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.8,
     "min": 18,
     "max": 22.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Suffers above about 20 °C; dies at 25 °C."
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 6.2,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 5.6,
     "max": 6.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "pHHigh": {
     "value": 9,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8.4,
     "max": 9.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 5,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 3,
     "max": 7.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessHigh": {
     "value": 25,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 3,
     "min": 18,
     "max": 35,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 4,
     "unit": "mg/L",
     "distribution": "normal",
     "spread": 0.5,
     "min": 2.8,
     "max": 5.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "oxygenMargin": {
     "value": 2,
     "unit": "mg/L",
     "distribution": "normal",
     "spread": 0.4,
     "min": 1,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.2,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.07,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "One tenth of the lethal concentration."
    },
    "ammoniaMedianLethal": {
     "value": 2.05,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1,
     "max": 4,
     "basis": "memory",
     "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)"
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 8,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 2,
     "max": 30,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Eats its own young and moulting animals; the number is judgement."
    },
    "crowdingHazard": {
     "value": 0.02,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.005,
     "max": 0.08,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nitriteMedianLethal": {
     "value": 1.8,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.55,
     "max": 5,
     "basis": "memory",
     "source": "Alonso and Camargo 2006, Environmental Toxicology 21: 90-94 (recalled)",
     "note": "96-hour lethal 2.09 mg N/L of the amphipod Eulimnogammarus toletanus at 28 mg/L chloride, brought to 20 mg/L."
    },
    "copperMedianLethal": {
     "value": 22,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 9.5,
     "max": 50,
     "basis": "published",
     "source": "Arthur and Leonard 1970, Journal of the Fisheries Research Board of Canada 27: 1277-1283; abstract",
     "note": "Gammarus pseudolimnaeus: 20 µg/L in soft water, taken as 45 mg/L hardness (memory) and brought to 50."
    },
    "saltHigh": {
     "value": 10.5,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.57,
     "min": 6.3,
     "max": 14.7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "6 g/L."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.2,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.2,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)"
     }
    },
    "nitrite": {
     "high": {
      "value": 0.5,
      "unit": "mg N/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm amphipods (Eulimnogammarus, Echinogammarus) over long times."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 2,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 20,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "fastestChange": {
    "waterTemperature": {
     "value": 2.5,
     "unit": "K",
     "basis": "page",
     "source": "Sprague 1963, Journal of the Fisheries Research Board of Canada 20: 387-415; abstract",
     "note": "Of Gammarus fasciatus and G. pseudolimnaeus: acclimation temperature could be raised by 2.5 to 5 K a day above 14 °C; the lower end."
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 10,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Native over much of Europe; taking it from the wild can be regulated.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "gelasiminae-spp": {
   "id": "gelasiminae-spp",
   "name": "fiddler crabs",
   "about": "Crabs of tidal mud that sift food from wet sand and dig burrows; they need brackish water, and their larvae grow up in the sea.",
   "cautions": [
    "In fresh water fiddler crabs decline; give brackish water and a deep bank of moist sand or mud.",
    "They climb out of open tanks."
   ],
   "scientificName": "Gelasiminae (Leptuca, Minuca, Tubuca and others)",
   "group": "mudflat crab",
   "leastFounders": {
    "value": 4,
    "unit": "1",
    "min": 3,
    "max": 6,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "Larvae and egg numbers of several species are well studied; what is sold is seldom named to species, and no captive population was followed."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "carried",
   "development": "brackish larvae",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Feeds on the mud at low water by day."
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "carapace width",
    "lengthAtBirth": {
     "value": 0.35,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Size of a newly hatched larva of such crabs."
    },
    "adultLength": {
     "value": 20,
     "unit": "mm",
     "min": 15,
     "max": 45,
     "basis": "page",
     "source": "Encyclopaedia article on fiddler crabs, a mirror of Wikipedia",
     "note": "Traded species are usually 15 to 30 mm wide."
    },
    "adultMass": {
     "value": 2500,
     "unit": "mg",
     "min": 1000,
     "max": 6000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 300,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found; lives of two to three years suggest the first year."
    },
    "youngPerBrood": {
     "value": 5000,
     "unit": "1",
     "min": 580,
     "max": 20000,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "580 large eggs in a species of abbreviated development (Rabalais and Cameron 1983), many thousands in most others."
    },
    "broodInterval": {
     "value": 45,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 14.5,
     "unit": "d",
     "min": 13,
     "max": 16,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 900,
     "unit": "d",
     "min": 730,
     "max": 1095,
     "basis": "page",
     "source": "Encyclopaedia article on fiddler crabs, a mirror of Wikipedia",
     "note": "No more than two years in nature, up to three in captivity."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "conductivity": {
     "low": {
      "value": 16000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "10 g/L of sea salt. Sea salt of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     },
     "high": {
      "value": 38000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "25 g/L of sea salt. Sea salt of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 12,
      "unit": "°dGH",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found; taken as for other crabs of mangroves."
     },
     "high": {
      "value": 380,
      "unit": "°dGH",
      "basis": "derived",
      "source": "sea water holds some 370 °dGH; this much at the saltiest it survives"
     }
    },
    "conductivity": {
     "low": {
      "value": 8900,
      "unit": "µS/cm",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "5 to 35 g/L."
     },
     "high": {
      "value": 53000,
      "unit": "µS/cm",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 34,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.07,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 1800,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "water": {
     "value": 5,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "height": {
     "value": 30,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 300,
     "unit": "cm²",
     "min": 300,
     "max": 600,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Of mud for each male."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild, and often sold without a sure name; check what may be imported where you live.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "It needs at least 10 cm of moist sand or mud to dig in and a brackish pool that it can leave.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put crabs outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "geosesarma-dennerle": {
   "id": "geosesarma-dennerle",
   "name": "vampire crabs",
   "about": "Small land crab of Javan valleys that breeds without salt water: the young leave their mother as small crabs. Display, active at dusk; eats small animals, leftovers and leaves.",
   "cautions": [
    "Every gap in the cover is a way out: vampire crabs climb silicone seams, cables and plants.",
    "Give each crab a hide: soft crabs after a moult and newborn ones are eaten by others."
   ],
   "scientificName": "Geosesarma dennerle and G. hagen",
   "group": "land crab",
   "leastFounders": {
    "value": 4,
    "unit": "1",
    "min": 3,
    "max": 6,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "More females than males; males fight."
   },
   "known": {
    "level": "poorly",
    "note": "Only size and egg size are published. Brood size, carrying time, growth and life span are what keepers tell, and keepers do not agree; the body mass is reckoned from the width of the shell."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "twilight",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Active at dusk and by night."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "carapace width",
    "lengthAtBirth": {
     "value": 2,
     "unit": "mm",
     "min": 1.5,
     "max": 3,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthAtPuberty": {
     "value": 9,
     "unit": "mm",
     "min": 8,
     "max": 10,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "adultLength": {
     "value": 12.5,
     "unit": "mm",
     "min": 11,
     "max": 14.5,
     "basis": "published",
     "source": "Ng, Schubart and Lukhaup 2015, Raffles Bulletin of Zoology 63: 3-13",
     "note": "Type series of both species."
    },
    "adultMass": {
     "value": 1500,
     "unit": "mg",
     "min": 800,
     "max": 2500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Estimated from the width of the shell; nobody seems to have weighed them."
    },
    "maturityAge": {
     "value": 180,
     "unit": "d",
     "min": 120,
     "max": 270,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 35,
     "unit": "1",
     "min": 20,
     "max": 80,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 45,
     "unit": "d",
     "min": 30,
     "max": 60,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodTime": {
     "value": 38,
     "unit": "d",
     "min": 25,
     "max": 60,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Most keepers say 25 to 40 d; one breeder says 45 to 60 d."
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lifespan": {
     "value": 750,
     "unit": "d",
     "min": 550,
     "max": 1000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 3,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 8,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Geosesarma hagen, a mirror of Wikipedia"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Geosesarma hagen, a mirror of Wikipedia"
     }
    },
    "airTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Geosesarma hagen, a mirror of Wikipedia"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Geosesarma hagen, a mirror of Wikipedia"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.05,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No threshold is measured for the genus; taken as for other crustaceans."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.5,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 8,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.7,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.15,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1800,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For four to six adults, about 60 × 30 cm."
    },
    "water": {
     "value": 2,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Shallow, with exits everywhere."
    },
    "height": {
     "value": 30,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 150,
     "unit": "cm²",
     "min": 80,
     "max": 400,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Keepers give 200 to 400 cm² of floor for each adult; crowded groups live on less and lose their soft ones."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Two species of narrow range on Java, taken from the wild in numbers; not listed by CITES as far as known. Buy captive-bred animals.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "It must be able to leave the water: drained land and shallow water with exits, never a plain aquarium.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus crabs outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "girardia-tigrina": {
   "id": "girardia-tigrina",
   "name": "planarians",
   "about": "Uninvited flatworm that divides, glides over glass and eats worms, eggs, carrion and newborn or soft shrimp.",
   "cautions": [
    "Medicines against planarians kill snails; remove leftovers and use traps first."
   ],
   "scientificName": "Girardia tigrina and others",
   "group": "flatworm",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Doubling of a relative and cannibalism are published; size, mass and tolerance are recalled."
   },
   "habitat": "water",
   "mating": "division",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Flees light."
   },
   "lifeHistory": {
    "temperature": {
     "value": 22,
     "unit": "°C",
     "basis": "published",
     "source": "Study of predation and fission of Dugesia dorotocephala on mosquito larvae, abstract; authors and year not shown in the record read"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 9,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece counts as a newborn; its length is taken so that numbers double as published."
    },
    "lengthAtPuberty": {
     "value": 9.8,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece begins to put matter by for the next division soon after it has regrown."
    },
    "adultLength": {
     "value": 14,
     "unit": "mm",
     "min": 5,
     "max": 18,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 7,
     "unit": "mg",
     "min": 2,
     "max": 15,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.2,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 13,
     "unit": "d",
     "min": 7,
     "max": 14,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 16,
     "unit": "d",
     "basis": "published",
     "source": "Study of predation and fission of Dugesia dorotocephala on mosquito larvae, abstract; authors and year not shown in the record read",
     "note": "Numbers doubled in 20 d."
    },
    "broodTime": {
     "value": 1,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Division itself is quick."
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Every worm divides."
    },
    "lifespan": {
     "value": 900,
     "unit": "d",
     "min": 300,
     "max": 3000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "nitriteMedianLethal": {
     "value": 60,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 18.5,
     "max": 200,
     "basis": "memory",
     "source": "Alonso and Camargo 2006, Environmental Toxicology 21: 90-94 (recalled)",
     "note": "Another planarian, Polycelis felina, 96 h."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 2,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 2,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 6,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.25,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.15,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.15,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.4,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "worms",
   "place": {
    "water": {
     "value": 0.9,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "risks": [
    {
     "kind": "law",
     "text": "From North America and at large in Europe: never pour tank water or plants into open water.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "heterocypris-incongruens": {
   "id": "heterocypris-incongruens",
   "name": "seed shrimp",
   "about": "Bean-shaped shelled hopper of the bottom that comes along with plants; eats algae, detritus and carrion. Eggs outlast drying for years.",
   "scientificName": "Heterocypris incongruens",
   "group": "ostracod",
   "leastFounders": {
    "value": 5,
    "unit": "1",
    "basis": "published",
    "source": "Rossi, Benassi, Belletti and Menozzi 2011, Journal of Limnology 70: 102-108, abstract",
    "note": "Five gave a dense population in a few weeks."
   },
   "shell": {
    "value": 0.6,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Valves and body weigh about alike."
   },
   "known": {
    "level": "fairly",
    "note": "Adult life and crowding are published; growth, eggs and size are recalled."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured"
   },
   "lifeHistory": {
    "temperature": {
     "value": 22,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "shell length",
    "lengthAtBirth": {
     "value": 0.2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 1,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Two thirds of full length; ostracods stop growing when grown up, which is not computed."
    },
    "adultLength": {
     "value": 1.5,
     "unit": "mm",
     "min": 1.2,
     "max": 1.7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 0.3,
     "unit": "mg",
     "min": 0.2,
     "max": 0.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.2,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 20,
     "unit": "d",
     "min": 15,
     "max": 25,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 10,
     "unit": "1",
     "min": 5,
     "max": 20,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 6,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 5,
     "unit": "d",
     "min": 3,
     "max": 7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 55,
     "unit": "d",
     "min": 43,
     "max": 64,
     "basis": "published",
     "source": "Fernandez, Nandini, Sarma and Castellanos-Paez, Journal of Limnology, abstract",
     "note": "23 to 44 d as an adult and some 20 d before."
    }
   },
   "traits": {
    "saltHigh": {
     "value": 8.9,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.33,
     "min": 5.34,
     "max": 12.46,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "5 g/L."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.3,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "Lives in fouled puddles."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "suspended algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.08,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 0.8,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.7,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.3,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "plankton",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "hyalella-azteca": {
   "id": "hyalella-azteca",
   "name": "Mexican scuds",
   "about": "Small amphipod that lives among plants and leaves, eats films, detritus, leaves and leftovers, and feeds fish and newts. Breeds all year in warm water.",
   "cautions": [
    "Alien in Europe: never release it, its water or plants it was kept with outdoors.",
    "Hungry groups nibble fine-leaved plants.",
    "Wash hands after work in the water; keep it away from mouth and open wounds."
   ],
   "scientificName": "Hyalella azteca",
   "group": "amphipod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.2,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass."
   },
   "known": {
    "level": "well",
    "note": "A test animal of ecotoxicology: growth, maturity, broods, survival and starvation are measured. What it eats of which food and how it answers acid or soft water is judged."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Swims mostly in the dark; eats among plants and litter at all hours."
   },
   "traits": {
    "referenceTemperature": {
     "value": 22,
     "unit": "°C",
     "basis": "published",
     "source": "Othman and Pascoe 2001, Crustaceana 74: 171-181; via the Add-my-Pet species file"
    },
    "dryMassPerCube": {
     "value": 0.0055,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 0.004,
     "max": 0.008,
     "basis": "published",
     "source": "Othman and Pascoe 2001, Crustaceana 74: 171-181; via the Add-my-Pet species file",
     "note": "Wet 7.0 to 8.7 mg at 7.1 mm, taken as one quarter dry (memory)."
    },
    "lengthAtBirth": {
     "value": 1.06,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.9,
     "max": 1.25,
     "basis": "published",
     "source": "Othman and Pascoe 2001, Crustaceana 74: 171-181; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 3.3,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.2,
     "min": 2.8,
     "max": 3.9,
     "basis": "published",
     "source": "Ingersoll et al. 1998, Environmental Toxicology and Chemistry 17: 1508-1523; via the Add-my-Pet species file",
     "note": "2.8 mm is the smallest breeding size; 3.3 mm is reached at the published age of maturity, 23 d."
    },
    "lengthAtEnd": {
     "value": 7.3,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.3,
     "min": 6.4,
     "max": 8.4,
     "basis": "published",
     "source": "Othman and Pascoe 2001, Crustaceana 74: 171-181; via the Add-my-Pet species file",
     "note": "Line through the lengths at age 8 to 186 d."
    },
    "growthRate": {
     "value": 0.0205,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 0.0145,
     "max": 0.029,
     "basis": "published",
     "source": "Othman and Pascoe 2001, Crustaceana 74: 171-181; via the Add-my-Pet species file",
     "note": "Line through the lengths at age 8 to 186 d."
    },
    "shareToSoma": {
     "value": 0.83,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.025,
     "min": 0.74,
     "max": 0.88,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With lateMaturing: broods of 3 to 5 at 4.9 mm and 11 to 17 at 6.2 to 6.8 mm (Othman and Pascoe 2001), about 51 young per female by day 126 (Pedersen et al. 2013)."
    },
    "eggPerNewborn": {
     "value": 1.4,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 1.15,
     "max": 1.8,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.35,
     "max": 0.65,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 10.3,
     "unit": "d",
     "distribution": "normal",
     "spread": 0.6,
     "min": 8.5,
     "max": 12.5,
     "basis": "published",
     "source": "Cooper 1965, Ecological Monographs 35: 377-394; via the Add-my-Pet species file",
     "note": "11.3 d at 21 °C, pouch time after hatching included."
    },
    "broodInterval": {
     "value": 11.5,
     "unit": "d",
     "distribution": "normal",
     "spread": 1,
     "min": 9,
     "max": 15,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingCoolest": {
     "value": 10,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1.5,
     "min": 6,
     "max": 14,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingWarmest": {
     "value": 31,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 28.5,
     "max": 34,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "activationEnergy": {
     "value": 0.74,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.55,
     "max": 0.95,
     "basis": "published",
     "source": "Mathias 1971, Journal of the Fisheries Research Board of Canada 28: 711-726; via the Add-my-Pet species file",
     "note": "Adult oxygen use rises 2.8 times per 10 °C between 10 and 22 °C."
    },
    "broodActivationEnergy": {
     "value": 0.7,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.5,
     "max": 0.95,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "heatLimit": {
     "value": 35,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 32.5,
     "max": 38,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.085,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.007,
     "min": 0.06,
     "max": 0.11,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.012,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.006,
     "max": 0.018,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.8,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.4,
     "max": 1.5,
     "basis": "memory",
     "source": "Hargrave 1970, Journal of Animal Ecology 39: 427-437 (recalled)",
     "note": "0.3 to 1.2 of its own dry mass a day in sediment and biofilm at 15 to 20 °C, magnitude recalled."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.6,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.25,
     "max": 1.5,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.05,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.01,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.001,
     "max": 0.05,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.4,
     "max": 0.8,
     "basis": "memory",
     "source": "Hargrave 1970, Journal of Animal Ecology 39: 427-437 (recalled)"
    },
    "efficiencyOnDetritus": {
     "value": 0.35,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.15,
     "max": 0.55,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Digests bacteria well (0.6 to 0.9) and cellulose not at all; detritus is a mixture."
    },
    "efficiencyOnLitter": {
     "value": 0.08,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.03,
     "max": 0.15,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.1,
     "max": 0.45,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 157,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 110,
     "max": 220,
     "basis": "published",
     "source": "Borgmann et al. 1989, Archives of Environmental Contamination and Toxicology 18: 756-764; via the Add-my-Pet species file",
     "note": "With the losses below it meets survival at 25 °C; warmth shortens life as it speeds growth."
    },
    "adultLoss": {
     "value": 0.003,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.0012,
     "max": 0.007,
     "basis": "published",
     "source": "Borgmann et al. 1989, Archives of Environmental Contamination and Toxicology 18: 756-764; via the Add-my-Pet species file"
    },
    "juvenileLoss": {
     "value": 0.004,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.0018,
     "max": 0.009,
     "basis": "published",
     "source": "Borgmann et al. 1989, Archives of Environmental Contamination and Toxicology 18: 756-764; via the Add-my-Pet species file"
    },
    "broodLoss": {
     "value": 0.005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.001,
     "max": 0.02,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 2,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 0,
     "max": 5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Overwinters in ponds on the Canadian prairie."
    },
    "temperatureHigh": {
     "value": 33,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 31,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 6,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 5.4,
     "max": 6.6,
     "basis": "page",
     "source": "Hyalella azteca, article of a wiki on closed ecological systems"
    },
    "pHHigh": {
     "value": 9.2,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8.6,
     "max": 10,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 4,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.7,
     "min": 2,
     "max": 6,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessHigh": {
     "value": 25,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 3,
     "min": 18,
     "max": 35,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "oxygenMargin": {
     "value": 0.7,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.35,
     "max": 1.4,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.2,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.08,
     "max": 0.3,
     "basis": "assumed",
     "source": "Borgmann 1994, Environmental Pollution 86: 329-335; abstract",
     "note": "Measured as total ammonia, 4.5 mg N/L with reproduction reduced and 14 mg N/L with deaths; shown here as the un-ionised part of such water at pH 8 and 25 °C (5.4 %). In very soft water ten times less suffices, which is not modelled."
    },
    "ammoniaMedianLethal": {
     "value": 1,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.6,
     "max": 2.2,
     "basis": "assumed",
     "source": "Borgmann 1994, Environmental Pollution 86: 329-335; abstract"
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 30,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 8,
     "max": 100,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures in jars hold tens per litre."
    },
    "crowdingHazard": {
     "value": 0.02,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.005,
     "max": 0.08,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nitriteMedianLethal": {
     "value": 1.8,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.55,
     "max": 7,
     "basis": "memory",
     "source": "Alonso and Camargo 2006, Environmental Toxicology 21: 90-94 (recalled)",
     "note": "96-hour lethal 2.09 mg N/L of the amphipod Eulimnogammarus toletanus at 28 mg/L chloride, brought to 20 mg/L. Hyalella itself lies among the crustaceans of Soucek and Dickinson 2012, whose figures were not seen."
    },
    "copperMedianLethal": {
     "value": 22,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 9.5,
     "max": 60,
     "basis": "published",
     "source": "Arthur and Leonard 1970, Journal of the Fisheries Research Board of Canada 27: 1277-1283; abstract",
     "note": "Stand-in: Gammarus pseudolimnaeus, 20 µg/L in soft water, taken as 45 mg/L hardness (memory) and brought to 50."
    },
    "saltHigh": {
     "value": 24,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 3.6,
     "min": 14.4,
     "max": 33.6,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "15 g/L, from ponds on the prairie."
    },
    "growthYield": {
     "value": 0.86,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.8,
     "max": 0.92,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Sets upkeep against growth: oxygen use of unfed adults at 10 to 22 °C (Mathias 1971)."
    },
    "lateMaturing": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Broods rise far more steeply than length squared: first broods are tiny."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "page",
      "source": "Hyalella azteca, article of a wiki on closed ecological systems"
     },
     "high": {
      "value": 9.2,
      "unit": "pH",
      "basis": "page",
      "source": "Hyalella azteca, article of a wiki on closed ecological systems"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.2,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Borgmann 1994, Environmental Pollution 86: 329-335; abstract"
     }
    },
    "nitrite": {
     "high": {
      "value": 1,
      "unit": "mg N/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm amphipods (Eulimnogammarus, Echinogammarus) over long times; shown on relatives."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 2,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "fastestChange": {
    "waterTemperature": {
     "value": 2.5,
     "unit": "K",
     "basis": "page",
     "source": "Sprague 1963, Journal of the Fisheries Research Board of Canada 20: 387-415; abstract",
     "note": "Acclimation temperature could be raised by 2.5 to 5 K a day above 14 °C; the lower end."
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 5,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Alien in Europe; no special rule for keeping it is known.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "hydra-viridissima": {
   "id": "hydra-viridissima",
   "name": "hydras",
   "about": "Uninvited polyp of a few millimetres that stings water fleas, newborn shrimp and the smallest fry, and buds.",
   "cautions": [
    "Its numbers follow the small live food you give; less of that is the first remedy."
   ],
   "scientificName": "Hydra viridissima, H. vulgaris",
   "group": "hydra",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Growth, generation and doubling of the green kind on a fixed ration are measured; mass and tolerance are recalled. Brine shrimp that the keeper puts in count as feed here."
   },
   "habitat": "water",
   "mating": "division",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Sits and waits."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Massaro and Rocha, A study of the life-cycle of Hydra viridissima, manuscript of the University of São Carlos"
    },
    "lengthMeasure": "length of the column",
    "lengthAtBirth": {
     "value": 1.3,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A bud is about half as long as its parent."
    },
    "lengthAtPuberty": {
     "value": 1.5,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A bud begins to put matter by for its own buds soon."
    },
    "adultLength": {
     "value": 2.5,
     "unit": "mm",
     "max": 10,
     "basis": "published",
     "source": "Massaro and Rocha, A study of the life-cycle of Hydra viridissima, manuscript of the University of São Carlos",
     "note": "Green hydra; brown ones to about 10 mm."
    },
    "adultMass": {
     "value": 0.3,
     "unit": "mg",
     "min": 0.2,
     "max": 1.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 5,
     "unit": "d",
     "min": 3,
     "max": 6.6,
     "basis": "published",
     "source": "Massaro and Rocha, A study of the life-cycle of Hydra viridissima, manuscript of the University of São Carlos",
     "note": "6.6 d from bud to first bud."
    },
    "youngPerBrood": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 8,
     "unit": "d",
     "min": 3,
     "max": 14.8,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Numbers doubled in 14.8 d on a scanty ration (Massaro and Rocha) and in two to four when well fed (memory)."
    },
    "broodTime": {
     "value": 3,
     "unit": "d",
     "min": 2,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Every polyp buds."
    },
    "lifespan": {
     "value": 700,
     "unit": "d",
     "min": 300,
     "max": 1500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "published",
      "source": "Massaro and Rocha, A study of the life-cycle of Hydra viridissima, manuscript of the University of São Carlos"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "published",
      "source": "Massaro and Rocha, A study of the life-cycle of Hydra viridissima, manuscript of the University of São Carlos"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.05,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.85,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.06,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "risks": [
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "hymenochirus-boettgeri": {
   "id": "hymenochirus-boettgeri",
   "name": "dwarf clawed frogs",
   "about": "Frog that never leaves the water, finds food by smell and is slow to it; fetches air at the surface.",
   "cautions": [
    "Fish eat its food away: feed it by hand, in its place."
   ],
   "scientificName": "Hymenochirus boettgeri",
   "group": "aquatic frog",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Egg and tadpole time and maturity are on care pages; mass, clutch and food are recalled or told by keepers. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "twilight",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Comes to feed by day and by night."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 1.7,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 0.3 mg, as a hatchling does (memory)."
    },
    "lengthAtPuberty": {
     "value": 26,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four fifths of full length."
    },
    "adultLength": {
     "value": 32,
     "unit": "mm",
     "min": 25,
     "max": 35,
     "basis": "page",
     "source": "Encyclopaedia article on Hymenochirus boettgeri, a mirror of Wikipedia"
    },
    "adultMass": {
     "value": 2000,
     "unit": "mg",
     "min": 1000,
     "max": 3500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 300,
     "unit": "d",
     "min": 270,
     "max": 365,
     "basis": "page",
     "source": "Hymenochirus page of D. Cecere, a site on tongueless frogs"
    },
    "youngPerBrood": {
     "value": 150,
     "unit": "1",
     "min": 50,
     "max": 750,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 60,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 2,
     "unit": "d",
     "basis": "page",
     "source": "Article on the life cycle of dwarf African frogs of the site Hobbies and Interests"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1600,
     "unit": "d",
     "max": 1825,
     "basis": "page",
     "source": "P. Irven, The aquatic frogs of Africa, Exotics Keeper Magazine",
     "note": "1825 d is the most quoted."
    },
    "lengthAtChange": {
     "value": 8.9,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Tadpoles take eight weeks."
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.35,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.15,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Parents eat many eggs: about half hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 23,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Breathes air."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "page",
      "source": "Pet wiki on the Congo dwarf clawed frog, quoting figures for least requirements"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "page",
      "source": "Pet wiki on the Congo dwarf clawed frog, quoting figures for least requirements"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 8,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.3,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.3,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.28,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1250,
     "unit": "cm²",
     "basis": "page",
     "source": "Pet wiki on the Congo dwarf clawed frog, quoting figures for least requirements",
     "note": "And 300 cm² for each above three, 25 cm deep."
    },
    "water": {
     "value": 40,
     "unit": "L",
     "basis": "page",
     "source": "Pet wiki on the Congo dwarf clawed frog, quoting figures for least requirements"
    },
    "groundPerAdult": {
     "value": 300,
     "unit": "cm²",
     "basis": "page",
     "source": "Pet wiki on the Congo dwarf clawed frog, quoting figures for least requirements"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Clawed frogs of the genus Xenopus are listed as invasive in the European Union, this genus is not; make sure which one you get.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "hypselotriton-orientalis": {
   "id": "hypselotriton-orientalis",
   "name": "Chinese fire-bellied newts",
   "about": "Small newt of cool, planted water; wraps its eggs in leaves one by one, and its young live on land for years. Warm rooms kill it.",
   "cautions": [
    "It must stay cool: above about 23 °C it is harmed. Think of summer first.",
    "The skin holds tetrodotoxin: wash hands, never with fish that nibble, out of reach of children."
   ],
   "scientificName": "Hypselotriton (Cynops) orientalis",
   "group": "newt",
   "leastFounders": {
    "value": 3,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Size, egg and larval time and warm limit are in print; years to maturity and egg numbers are told by keepers or recalled. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "always",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Takes feed by day and at dusk."
   },
   "lifeHistory": {
    "temperature": {
     "value": 18,
     "unit": "°C",
     "min": 15,
     "max": 23,
     "basis": "page",
     "source": "AmphibiaWeb on Cynops orientalis, citing Yang and Shen 1993 and Fei et al. 2006"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 5.3,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 7 mg, as a hatchling of 10 mm does (memory)."
    },
    "lengthAtPuberty": {
     "value": 36,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A little below the usual adult."
    },
    "adultLength": {
     "value": 42,
     "unit": "mm",
     "min": 40,
     "max": 45,
     "basis": "page",
     "source": "AmphibiaWeb on Cynops orientalis, citing Yang and Shen 1993 and Fei et al. 2006",
     "note": "Males 40 mm, females 45 mm from snout to vent."
    },
    "adultMass": {
     "value": 3500,
     "unit": "mg",
     "min": 2500,
     "max": 5500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 900,
     "unit": "d",
     "min": 730,
     "max": 1095,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 15,
     "unit": "1",
     "min": 8,
     "max": 22,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "100 to 260 eggs a season (memory), laid singly, spread over the year in lots of a month."
    },
    "broodInterval": {
     "value": 30,
     "unit": "d",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "See the number of young."
    },
    "broodTime": {
     "value": 18,
     "unit": "d",
     "min": 13,
     "max": 24,
     "basis": "page",
     "source": "Species fact profile of the Chinese fire-bellied newt, The Zoo Review"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 3600,
     "unit": "d",
     "min": 2000,
     "max": 4380,
     "basis": "page",
     "source": "Species fact profile of the Chinese fire-bellied newt, The Zoo Review",
     "note": "12 years at most."
    },
    "lengthAtChange": {
     "value": 9.4,
     "unit": "mm",
     "max": 30,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Larvae take 50 to 80 d at 20 °C and leave the water at 30 mm of total length (AmphibiaWeb)."
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.04,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.12,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Adults eat many of their eggs: about half hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 14,
      "unit": "°C",
      "basis": "page",
      "source": "Reference article on the Chinese fire-bellied newt of the site RedOrbit"
     },
     "high": {
      "value": 20,
      "unit": "°C",
      "basis": "page",
      "source": "Reference article on the Chinese fire-bellied newt of the site RedOrbit"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.1,
      "unit": "mg N/L",
      "min": 0.05,
      "max": 0.3,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for amphibian larvae."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 4,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "page",
      "source": "Reference article on the Chinese fire-bellied newt of the site RedOrbit",
      "note": "Stress or death above 74 °F."
     }
    },
    "airTemperature": {
     "low": {
      "value": 4,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.52,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 12,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.18,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.35,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.06,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.29,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "water": {
     "value": 0.85,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.12,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1800,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "water": {
     "value": 60,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For a pair."
    },
    "groundPerAdult": {
     "value": 250,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Sixty litres for a pair, with room for a few more."
    }
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Tetrodotoxin in the skin: do not swallow, do not rub the eyes, wash hands; animals that bite a newt can die.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "law",
     "text": "The European Union and the USA restrict import and movement of salamanders because of the fungus Bsal.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it or its water outdoors: it can bring fungi that kill native salamanders.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "lepidodactylus-lugubris": {
   "id": "lepidodactylus-lugubris",
   "name": "mourning geckos",
   "about": "All-female gecko of nine centimetres that lives in the canopy, eats insects and fruit pap and glues its eggs to leaves and glass.",
   "cautions": [
    "Hatchlings leave through gaps of 1 to 2 mm.",
    "Eggs glued to glass cannot be moved: leave them or cover them with a cup."
   ],
   "scientificName": "Lepidodactylus lugubris",
   "group": "gecko",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Size, clutch and interval are in an encyclopaedia; egg time, growth and maturity are told by keepers, the mass is recalled. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "land",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 18,
     "unit": "mm",
     "min": 16,
     "max": 20,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 37,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A little below the usual adult."
    },
    "adultLength": {
     "value": 42,
     "unit": "mm",
     "min": 40,
     "max": 44,
     "basis": "page",
     "source": "Encyclopaedia article on Lepidodactylus lugubris, mirrors of Wikipedia"
    },
    "adultMass": {
     "value": 1900,
     "unit": "mg",
     "min": 1500,
     "max": 2500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.28,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 285,
     "unit": "d",
     "min": 240,
     "max": 330,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 1.6,
     "unit": "1",
     "min": 1,
     "max": 2,
     "basis": "page",
     "source": "Encyclopaedia article on Lepidodactylus lugubris, mirrors of Wikipedia"
    },
    "broodInterval": {
     "value": 35,
     "unit": "d",
     "min": 28,
     "max": 42,
     "basis": "page",
     "source": "Encyclopaedia article on Lepidodactylus lugubris, mirrors of Wikipedia",
     "note": "Another page says two to three weeks."
    },
    "broodTime": {
     "value": 75,
     "unit": "d",
     "min": 60,
     "max": 100,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "page",
     "source": "Encyclopaedia article on Lepidodactylus lugubris, mirrors of Wikipedia"
    },
    "lifespan": {
     "value": 2600,
     "unit": "d",
     "min": 1800,
     "max": 3650,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 23,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 85,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 33,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 45,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "feed": {
     "value": 0.65,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 6,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "reptiles",
   "place": {
    "margin": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.08,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.9,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 900,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For three or four."
    },
    "height": {
     "value": 45,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 220,
     "unit": "cm²",
     "min": 200,
     "max": 1000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Of floor; keepers give 500 to 1000 cm² of wall for each."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Carried over all warm coasts by people; never release it in warm regions.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "welfare",
     "text": "Needs calcium for its eggs: dusted food or liquid calcium.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "limnopilos-naiyanetri": {
   "id": "limnopilos-naiyanetri",
   "name": "Thai micro crabs",
   "about": "A shy crab of a few millimetres that lives wholly under water among roots and moss. Keepers see larvae that hardly ever grow up; here none do.",
   "scientificName": "Limnopilos naiyanetri",
   "group": "freshwater crab",
   "leastFounders": {
    "value": 6,
    "unit": "1",
    "min": 5,
    "max": 10,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass; crabs have the thickest."
   },
   "known": {
    "level": "poorly",
    "note": "Only size is published. What the larvae need is unknown, so young are taken never to grow up; everything else is what keepers tell or judged."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "development": "brackish larvae",
   "active": {
    "when": "night",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "carapace width",
    "lengthAtBirth": {
     "value": 0.5,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Size of a small crab larva."
    },
    "lengthAtPuberty": {
     "value": 3.8,
     "unit": "mm",
     "min": 3.1,
     "max": 4.6,
     "basis": "published",
     "source": "Naruse and Ng 2007, Zootaxa 1621: 17-31",
     "note": "Egg-bearing females of a relative, L. sumatranus."
    },
    "adultLength": {
     "value": 5.5,
     "unit": "mm",
     "min": 3.1,
     "max": 6.4,
     "basis": "published",
     "source": "Naruse and Ng 2007, Zootaxa 1621: 17-31",
     "note": "Specimens of the first description; an encyclopaedia gives up to 10 mm."
    },
    "adultMass": {
     "value": 120,
     "unit": "mg",
     "min": 40,
     "max": 250,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Estimated from the width of the shell."
    },
    "maturityAge": {
     "value": 120,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "youngPerBrood": {
     "value": 40,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodInterval": {
     "value": 45,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 25,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 450,
     "unit": "d",
     "min": 365,
     "max": 550,
     "basis": "page",
     "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     }
    },
    "KH": {
     "low": {
      "value": 1,
      "unit": "°dKH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 8,
      "unit": "°dKH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "page",
      "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.03,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "A keepers' safety limit, not a measured threshold."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "suspended algae": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "page",
     "source": "Information sheet of a shop on Limnopilos naiyanetri (Aquarium Dietzenbach)"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Known from one river basin of Thailand and caught in the wild.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Keep it with shrimp only, among roots and moss; fish longer than 20 mm, crayfish and large crabs eat it.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "lumbriculus-variegatus": {
   "id": "lumbriculus-variegatus",
   "name": "blackworms",
   "about": "Worm of wet mud that divides, eats detritus head down, and feeds fish, newts and frogs.",
   "scientificName": "Lumbriculus variegatus",
   "group": "water worm",
   "leastFounders": {
    "value": 20,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Doubling time is on a teaching sheet, size at division and regrowth are published; food and need for oxygen are recalled."
   },
   "habitat": "water",
   "mating": "division",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Eats in the ground."
   },
   "lifeHistory": {
    "temperature": {
     "value": 22,
     "unit": "°C",
     "basis": "page",
     "source": "Drewes 2002, Culturing Lumbriculus, teaching sheet of Iowa State University"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 36,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece counts as a newborn; its length is taken so that numbers double as published."
    },
    "lengthAtPuberty": {
     "value": 39,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece begins to put matter by for the next division soon after it has regrown."
    },
    "adultLength": {
     "value": 50,
     "unit": "mm",
     "min": 30,
     "max": 80,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 10,
     "unit": "mg",
     "min": 4,
     "max": 15,
     "basis": "published",
     "source": "Leppänen and Kukkonen 1998, Environmental Toxicology and Chemistry 17, doi 10.1002/etc.5620171109, abstract",
     "note": "About 9 mg is the least size at which worms divide; the range is recalled."
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 12,
     "unit": "d",
     "min": 7,
     "max": 21,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Head pieces begin to feed after 2 d, tail pieces after 6 to 7 d (Leppänen and Kukkonen 1998); then they grow."
    },
    "youngPerBrood": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Two or three worms from one."
    },
    "broodInterval": {
     "value": 20,
     "unit": "d",
     "min": 18,
     "max": 28,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Numbers double in 21 to 28 d (Drewes 2002)."
    },
    "broodTime": {
     "value": 1,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Division itself is quick."
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Every worm divides."
    },
    "lifespan": {
     "value": 1000,
     "unit": "d",
     "min": 400,
     "max": 2000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "saltHigh": {
     "value": 5.4,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 0.81,
     "min": 3.24,
     "max": 7.56,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "3 g/L."
    },
    "saltHighMargin": {
     "value": 6.6,
     "unit": "mS/cm",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 3.67,
     "max": 11.88,
     "basis": "published",
     "source": "Kefford et al. 2003, Marine and Freshwater Research 54: 755-765; abstract",
     "note": "72-hour lethal 9 to 14 mS/cm of gastropods, worms and planarians."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 23,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.2,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found; taken as for small crustaceans."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Holds its tail up into the water."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 4,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.17,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "worms",
   "place": {
    "water": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.8,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "disease",
     "text": "Cultures bring mites and moulds along; look at them before you feed from them.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "melanoides-tuberculata": {
   "id": "melanoides-tuberculata",
   "name": "trumpet snails",
   "about": "Snail that ploughs the ground by day and bears live young without males. Useful in sand; numbers follow the leftovers.",
   "scientificName": "Melanoides tuberculata",
   "group": "livebearing snail",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "well",
    "note": "Growth, size at birth and first release, heat and life span are measured; the pouch content, release interval and body mass are recalled."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Stays in the ground by day and comes out at night."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "published",
     "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
    },
    "lengthMeasure": "shell length",
    "lengthAtBirth": {
     "value": 2.2,
     "unit": "mm",
     "basis": "published",
     "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
    },
    "lengthAtPuberty": {
     "value": 12,
     "unit": "mm",
     "min": 10.1,
     "max": 14.9,
     "basis": "published",
     "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
    },
    "adultLength": {
     "value": 20,
     "unit": "mm",
     "min": 10,
     "max": 42,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "10 to 12 mm in the laboratory on scanty food, 42 mm approached in Brazil; 20 to 25 mm is usual in tanks."
    },
    "adultMass": {
     "value": 300,
     "unit": "mg",
     "min": 100,
     "max": 1500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body of a snail of 20 mm."
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 150,
     "unit": "d",
     "min": 90,
     "max": 275,
     "basis": "published",
     "source": "Dudgeon 1986, Journal of Zoology 208: 37-53, abstract",
     "note": "90 to 120 d in Hong Kong, 275 d on scanty food in the laboratory (Okumura and Rocha 2020)."
    },
    "youngPerBrood": {
     "value": 20,
     "unit": "1",
     "min": 10,
     "max": 70,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "10 to 70 embryos lie in the pouch and leave by and by."
    },
    "broodInterval": {
     "value": 30,
     "unit": "d",
     "min": 20,
     "max": 40,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 30,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Time in the pouch; no figure found."
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "published",
     "source": "Dudgeon 1986, Journal of Zoology 208: 37-53, abstract",
     "note": "Females only in most populations."
    },
    "lifespan": {
     "value": 550,
     "unit": "d",
     "min": 350,
     "max": 912,
     "basis": "published",
     "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
    }
   },
   "traits": {
    "copperMedianLethal": {
     "value": 350,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 150,
     "max": 1300,
     "basis": "memory",
     "source": "Shuhaimi-Othman et al. 2012 (recalled): 140 µg/L in 96 h at 19 mg/L hardness",
     "note": "Brought to 50 mg/L hardness."
    },
    "saltHigh": {
     "value": 8.9,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.33,
     "min": 5.34,
     "max": 12.46,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "5 g/L."
    },
    "saltHighMargin": {
     "value": 5,
     "unit": "mS/cm",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 2.78,
     "max": 9,
     "basis": "published",
     "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19; abstract",
     "note": "24-hour lethal 9.05 g/L of table salt, some 16 mS/cm; less in four days."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four times the density cut the eggs of Biomphalaria snails by 72 to 75 % (McCreesh et al. 2014), and eggs fall with density however much food there is (Mangal et al. 2010); that half are left at the crowding density is judgement."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 3,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "20 mg/L of calcium, recalled from Boycott 1936, with some magnesium."
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 34,
      "unit": "°C",
      "basis": "published",
      "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Comes to the surface when oxygen is short."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "published",
      "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
     },
     "high": {
      "value": 37,
      "unit": "°C",
      "basis": "published",
      "source": "Okumura and Rocha 2020, Acta Limnologica Brasiliensia 32: e19"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 5,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Established in many warm countries outside its range. Never release it, its water or plants it sat on.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Snails from outdoors, above all from warm countries, can be hosts of flukes and lungworm: buy bred ones, wash hands, never eat them raw.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "moina-macrocopa": {
   "id": "moina-macrocopa",
   "name": "Japanese water fleas",
   "about": "Small, very fast water flea of warm, rich water; food for fry.",
   "scientificName": "Moina macrocopa",
   "group": "water flea",
   "leastFounders": {
    "value": 50,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "well",
    "note": "Growth, broods and survival are measured at several foods and temperatures; mass, hardness and oxygen are recalled."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Filters at all hours."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.5,
     "unit": "mm",
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 1.1,
     "unit": "mm",
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file"
    },
    "adultLength": {
     "value": 1.5,
     "unit": "mm",
     "min": 1.1,
     "max": 1.8,
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file"
    },
    "adultMass": {
     "value": 0.22,
     "unit": "mg",
     "min": 0.05,
     "max": 0.4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.08,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 2,
     "unit": "d",
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file"
    },
    "youngPerBrood": {
     "value": 14,
     "unit": "1",
     "min": 5,
     "max": 27,
     "basis": "published",
     "source": "Martinez-Jeronimo and Gutierrez-Valdivia 1991, Hydrobiologia 222: 49-55; via the Add-my-Pet species file",
     "note": "27 is the most, at 27 °C."
    },
    "broodInterval": {
     "value": 1.4,
     "unit": "d",
     "basis": "published",
     "source": "Martinez-Jeronimo and Gutierrez-Valdivia 1991, Hydrobiologia 222: 49-55; via the Add-my-Pet species file"
    },
    "broodTime": {
     "value": 1.4,
     "unit": "d",
     "basis": "published",
     "source": "Martinez-Jeronimo and Gutierrez-Valdivia 1991, Hydrobiologia 222: 49-55; via the Add-my-Pet species file"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 9,
     "unit": "d",
     "min": 5,
     "max": 23,
     "basis": "published",
     "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file",
     "note": "Median age at death 4.5 d at 25 °C, 8 at 30, 14 at 20 and 19 at 18 °C."
    }
   },
   "traits": {
    "saltHigh": {
     "value": 7,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.05,
     "min": 4.2,
     "max": 9.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "4 g/L."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Crowding lowers the broods of water fleas whatever the food (Gergs et al. 2014); that half are left at the crowding density is judgement."
    },
    "filtering": {
     "value": 1,
     "unit": "1",
     "basis": "published",
     "source": "Jeschke, Kopp and Tollrian 2004, Biological Reviews 79: 337-349, recalled",
     "note": "Filters without choosing."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.3,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "A little below the larger water flea."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Forms haemoglobin."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "published",
      "source": "Benider, Tifnouti and Pourriot 2002, Hydrobiologia 468: 1-11; via the Add-my-Pet species file",
      "note": "Survives poorly at 15 °C."
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "suspended algae": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "plankton",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 2,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "disease",
     "text": "Cultures bring mites and moulds along; look at them before you feed from them.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "nais-spp": {
   "id": "nais-spp",
   "name": "detritus worms",
   "about": "Threads of a few millimetres that live in mulm and filters and swarm on the glass when oxygen or food changes; they are a sign of leftovers, not a harm.",
   "scientificName": "Nais, Pristina, Dero",
   "group": "water worm",
   "leastFounders": {
    "value": 20,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Doubling time at two temperatures and mean mass are published; length and food are recalled."
   },
   "habitat": "water",
   "mating": "division",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured"
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Lochhead and Learner 1983, Hydrobiologia 98: 107-112, abstract"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 3.4,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece counts as a newborn; its length is taken so that numbers double as published."
    },
    "lengthAtPuberty": {
     "value": 3.7,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "A piece begins to put matter by for the next division at once."
    },
    "adultLength": {
     "value": 5,
     "unit": "mm",
     "min": 2,
     "max": 10,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 0.22,
     "unit": "mg",
     "basis": "published",
     "source": "Schönborn 1985, Zoologischer Anzeiger 215: 311-328, abstract",
     "note": "Mean of Nais elinguis."
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 1.5,
     "unit": "d",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "From the doubling time of about 3 d at 20 °C."
    },
    "youngPerBrood": {
     "value": 1,
     "unit": "1",
     "min": 1,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 2.2,
     "unit": "d",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Doubling in about 3 d at 20 °C (Lochhead and Learner 1983)."
    },
    "broodTime": {
     "value": 0.5,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "The chain comes apart."
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Every worm divides."
    },
    "lifespan": {
     "value": 70,
     "unit": "d",
     "min": 30,
     "max": 120,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "activationEnergy": {
     "value": 1,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.75,
     "max": 1.25,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "Doubling in 3 d at 20 °C and 22 d at 8 °C (Lochhead and Learner 1983) asks for 1.2 eV; a little less is taken, since food also fell."
    },
    "broodActivationEnergy": {
     "value": 1,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.75,
     "max": 1.25,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "As for growth."
    },
    "copperMedianLethal": {
     "value": 90,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 38,
     "max": 300,
     "basis": "memory",
     "source": "US EPA 1985, Ambient water quality criteria for copper, EPA 440/5-84-031 (recalled)",
     "note": "Nais, 96 h at 50 mg/L hardness."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.2,
      "unit": "mg N/L",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found; taken as for small crustaceans."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "published",
      "source": "Lochhead and Learner 1983, Hydrobiologia 98: 107-112, abstract",
      "note": "Tested from 8 to 20 °C."
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "suspended algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "worms",
   "place": {
    "water": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "neocaridina-davidi": {
   "id": "neocaridina-davidi",
   "name": "cherry shrimp",
   "about": "The hardiest of the dwarf shrimp: grazes films and algae all day, bears young like their parents and multiplies as far as the food goes.",
   "cautions": [
    "Established from releases in Germany, Hungary, Poland, Slovakia, Japan and Hawaii: never release it outdoors.",
    "Copper from medicines, fertilisers or pipes kills shrimp at a few hundredths of a milligram per litre.",
    "Wash hands after work in the water; keep it away from mouth and open wounds."
   ],
   "scientificName": "Neocaridina davidi",
   "group": "shrimp",
   "leastFounders": {
    "value": 8,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.12,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Thin cuticles hold little mineral."
   },
   "known": {
    "level": "fairly",
    "note": "Egg time, brood size and age at maturity are measured near 27 °C, the answer to heat at 24 to 32 °C. Tolerances of pH, hardness, ammonia and oxygen are trade lore; feeding rates are estimates."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Grazes all day long; comes to feed at any hour."
   },
   "traits": {
    "referenceTemperature": {
     "value": 27,
     "unit": "°C",
     "basis": "published",
     "source": "Nur and Christianus 2013, Asian Journal of Animal and Veterinary Advances 8: 108-115; abstract"
    },
    "dryMassPerCube": {
     "value": 0.0008,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 0.0005,
     "max": 0.0013,
     "basis": "page",
     "source": "Cherry shrimp: types, care, feeding, reproduction. Article on an aquaculture news site",
     "note": "Females weigh 44 mg wet near 23 mm, taken as 22 % dry (memory)."
    },
    "lengthAtBirth": {
     "value": 4,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.25,
     "min": 3.4,
     "max": 4.8,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Length that fits the mass of a newborn from eggs 1.2 mm long; measured total length at hatching is 2.3 mm (Nur and Christianus 2013), when the body still holds yolk."
    },
    "lengthAtPuberty": {
     "value": 15,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.8,
     "min": 13,
     "max": 17.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "14 to 17 mm."
    },
    "lengthAtEnd": {
     "value": 26,
     "unit": "mm",
     "distribution": "normal",
     "spread": 1.2,
     "min": 23,
     "max": 30,
     "basis": "published",
     "source": "Mahmoud et al. 2020, Biodiversitas 21: 2396-2402; abstract",
     "note": "23 to 30 mm."
    },
    "growthRate": {
     "value": 0.0092,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 0.006,
     "max": 0.014,
     "basis": "published",
     "source": "Mahmoud et al. 2020, Biodiversitas 21: 2396-2402; abstract",
     "note": "15 mm at the published age of maturity, 75 d at 25 to 28 °C."
    },
    "shareToSoma": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.03,
     "min": 0.58,
     "max": 0.82,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Gives broods of 21 to 51 (Nur and Christianus 2013)."
    },
    "eggPerNewborn": {
     "value": 1.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 1.25,
     "max": 2.1,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 0.505,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.03,
     "min": 0.4,
     "max": 0.6,
     "basis": "published",
     "source": "Schoolmann and Arndt 2018, Limnologica 71: 1-7; abstract"
    },
    "broodTime": {
     "value": 15,
     "unit": "d",
     "distribution": "normal",
     "spread": 1,
     "min": 12.5,
     "max": 18,
     "basis": "published",
     "source": "Nur and Christianus 2013, Asian Journal of Animal and Veterinary Advances 8: 108-115; abstract"
    },
    "broodInterval": {
     "value": 24,
     "unit": "d",
     "distribution": "normal",
     "spread": 2.5,
     "min": 18,
     "max": 32,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "28 to 35 d at 24 to 26 °C."
    },
    "breedingCoolest": {
     "value": 16,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1.5,
     "min": 12,
     "max": 19.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingWarmest": {
     "value": 31,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.6,
     "min": 29.5,
     "max": 32,
     "basis": "published",
     "source": "Tropea et al. 2015, PLoS ONE 10(3): e0119468; abstract",
     "note": "Best at 28 °C; all broods lost at 32 °C."
    },
    "activationEnergy": {
     "value": 0.6,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.4,
     "max": 0.85,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodActivationEnergy": {
     "value": 0.65,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.45,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "heatLimit": {
     "value": 34.5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 32,
     "max": 37.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.085,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.007,
     "min": 0.06,
     "max": 0.11,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.012,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.006,
     "max": 0.018,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.3,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.15,
     "max": 0.6,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "40 to 120 mg dry per g wet and day at 25 °C, estimate."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.4,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.15,
     "max": 1,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.03,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.005,
     "max": 0.15,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.002,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0003,
     "max": 0.01,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.4,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnDetritus": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnLitter": {
     "value": 0.08,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.03,
     "max": 0.15,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.1,
     "max": 0.45,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 430,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 300,
     "max": 600,
     "basis": "published",
     "source": "Schoolmann and Arndt 2018, Limnologica 71: 1-7; abstract",
     "note": "12 months in a warm stream, up to 21 months in the laboratory."
    },
    "adultLoss": {
     "value": 0.001,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.0003,
     "max": 0.004,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "juvenileLoss": {
     "value": 0.003,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.001,
     "max": 0.01,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.7 to 0.9 survive 90 d."
    },
    "broodLoss": {
     "value": 0.008,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.002,
     "max": 0.03,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "0.7 to 0.95 of the eggs hatch."
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 2.5,
     "max": 8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "temperatureHigh": {
     "value": 32.5,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 31,
     "max": 34.5,
     "basis": "published",
     "source": "Tropea et al. 2015, PLoS ONE 10(3): e0119468; abstract",
     "note": "Survival is high for 90 d at 24 to 32 °C."
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 6.2,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.25,
     "min": 5.5,
     "max": 6.8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHHigh": {
     "value": 8.5,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8,
     "max": 9.4,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.6,
     "min": 1.5,
     "max": 5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Failed moults are blamed on less than 4 °dGH."
    },
    "hardnessHigh": {
     "value": 20,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 2.5,
     "min": 14,
     "max": 28,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 2.5,
     "unit": "mg/L",
     "distribution": "normal",
     "spread": 0.4,
     "min": 1.5,
     "max": 3.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "oxygenMargin": {
     "value": 1.3,
     "unit": "mg/L",
     "distribution": "normal",
     "spread": 0.3,
     "min": 0.6,
     "max": 2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.05,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.015,
     "max": 0.15,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Keepers' limit of 0.02 to 0.05 mg N/L; no measured threshold was found."
    },
    "ammoniaMedianLethal": {
     "value": 0.8,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No measured value for the species was found."
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 6,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 1.5,
     "max": 25,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "Keepers run 1 to 5 adults per litre with filtration."
    },
    "crowdingHazard": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.003,
     "max": 0.04,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "copperMedianLethal": {
     "value": 31,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 13.5,
     "max": 110,
     "basis": "memory",
     "source": "Yang et al. 2008 (recalled): Macrobrachium nipponense, 96 h",
     "note": "Stand-in; the hardness of that test is not known."
    },
    "saltHigh": {
     "value": 17,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 2.55,
     "min": 10.2,
     "max": 23.8,
     "basis": "published",
     "source": "Nur and Christianus 2013, Asian Journal of Animal and Veterinary Advances 8: 108-115; abstract",
     "note": "5 to 10 g/L of salt are used as a treatment against worms and survived."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 14,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.05,
      "unit": "mg N/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "nitrite": {
     "high": {
      "value": 0.3,
      "unit": "mg N/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "published",
      "source": "Tropea et al. 2015, PLoS ONE 10(3): e0119468; abstract"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "published",
      "source": "Tropea et al. 2015, PLoS ONE 10(3): e0119468; abstract"
     }
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 10,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "At large in warm waters of Europe, Japan and North America. Never release it.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Copper kills shrimp: no copper pipes, medicines or plant food with copper.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "neritina-spp": {
   "id": "neritina-spp",
   "name": "nerite snails",
   "about": "The best grazer of firm algae among snails. Sticks white capsules on everything, but its larvae need salt water: it never multiplies in fresh water.",
   "cautions": [
    "It crawls out and dries up: keep the cover shut and look round the tank."
   ],
   "scientificName": "Vittina turrita, Neritina natalensis and relatives",
   "group": "grazing snail",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "fairly",
    "note": "Laying is measured for one species; growth, mass and life span are recalled or told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "development": "brackish larvae",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Grazes more in the dark."
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "min": 25,
     "max": 28,
     "basis": "published",
     "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
    },
    "lengthMeasure": "shell height",
    "lengthAtBirth": {
     "value": 0.3,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A larva and its share of yolk."
    },
    "adultLength": {
     "value": 22,
     "unit": "mm",
     "min": 20,
     "max": 32,
     "basis": "page",
     "source": "Encyclopaedia article on Neritina natalensis and turrita, a German mirror"
    },
    "adultMass": {
     "value": 1200,
     "unit": "mg",
     "min": 600,
     "max": 2500,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body."
    },
    "dryPart": {
     "value": 0.18,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 365,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "youngPerBrood": {
     "value": 2000,
     "unit": "1",
     "min": 100,
     "max": 8000,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "53 capsules a laying, 3 to 192 (Hristov 2020), of some 40 larvae each (memory)."
    },
    "broodInterval": {
     "value": 6,
     "unit": "d",
     "min": 3,
     "max": 9,
     "basis": "published",
     "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
    },
    "broodTime": {
     "value": 20,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1000,
     "unit": "d",
     "min": 400,
     "max": 1800,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "traits": {
    "copperMedianLethal": {
     "value": 400,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 170,
     "max": 1600,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Between Melanoides and Campeloma decisum, 1700 µg/L in soft water (Arthur and Leonard 1970): snails that shut their shells bear more than those without a lid."
    },
    "saltHigh": {
     "value": 53,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 7.95,
     "min": 31.8,
     "max": 74.2,
     "basis": "published",
     "source": "Hristov 2020 on Neritina turrita; abstract",
     "note": "Lives up to sea water."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.4,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 4,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "published",
      "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "published",
      "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "published",
      "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "published",
      "source": "Hristov 2020, Indian Journal of Pure and Applied Biosciences 8(5): 1-10"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 380,
      "unit": "°dGH",
      "basis": "derived",
      "source": "sea water holds some 370 °dGH; it lives up to that"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.7,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 0.95,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 20,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For one or two."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "It starves in very clean tanks: take one for 10 to 20 L that really grow algae.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Snails from outdoors, above all from warm countries, can be hosts of flukes and lungworm: buy bred ones, wash hands, never eat them raw.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "oryzias-woworae": {
   "id": "oryzias-woworae",
   "name": "Daisy's ricefish",
   "about": "Small blue surface fish of one stream on Sulawesi; carries its eggs for hours and hangs them on plants.",
   "cautions": [
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Oryzias woworae",
   "group": "fish",
   "leastFounders": {
    "value": 6,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "Size is published; egg time and number come from importers; growth is told by keepers."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 26,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "standard length",
    "lengthAtBirth": {
     "value": 4,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 26,
     "unit": "mm",
     "max": 28,
     "basis": "published",
     "source": "Parenti and Hadiaty 2010, Copeia 2010: 268-273"
    },
    "adultMass": {
     "value": 260,
     "unit": "mg",
     "min": 150,
     "max": 400,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 120,
     "unit": "d",
     "min": 90,
     "max": 150,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 10,
     "unit": "1",
     "min": 10,
     "max": 20,
     "basis": "page",
     "source": "News page on Daisy's ricefish of the importer Quality Marine"
    },
    "broodInterval": {
     "value": 4,
     "unit": "d",
     "min": 1,
     "max": 5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Every one to three days in season, with rests."
    },
    "broodTime": {
     "value": 17,
     "unit": "d",
     "min": 7,
     "max": 21,
     "basis": "page",
     "source": "Species note on Oryzias cf. woworae of the importer Aquarium Glaser"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1000,
     "unit": "d",
     "min": 700,
     "max": 1300,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.06,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.02,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Adults take little interest in eggs (importer); about a third of those laid hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 23,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "page",
      "source": "Species note on Oryzias cf. woworae of the importer Aquarium Glaser"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "page",
      "source": "Species note on Oryzias cf. woworae of the importer Aquarium Glaser"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.57,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.38,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.03,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 54,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Known from one stream on the island of Muna; use bred stock.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "parasesarma-bidens": {
   "id": "parasesarma-bidens",
   "name": "red-clawed crabs",
   "about": "Mangrove crab often sold as a freshwater animal: it needs brackish water, land and a tight lid, and its larvae grow up in the sea.",
   "cautions": [
    "Often sold wrongly as a freshwater crab: in fresh water it declines within weeks.",
    "It escapes through every gap and over cables."
   ],
   "scientificName": "Parasesarma bidens",
   "group": "mangrove crab",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "min": 1,
    "max": 3,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "One male with females."
   },
   "known": {
    "level": "poorly",
    "note": "Larvae of a relative are studied; size, numbers of eggs and growth are recalled or judged."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "carried",
   "development": "brackish larvae",
   "active": {
    "when": "twilight",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Active at dusk and by night, by day in the shade."
   },
   "lifeHistory": {
    "temperature": {
     "value": 27,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "carapace width",
    "lengthAtBirth": {
     "value": 0.4,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Size of a newly hatched larva of such crabs."
    },
    "adultLength": {
     "value": 28,
     "unit": "mm",
     "min": 20,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 9000,
     "unit": "mg",
     "min": 5000,
     "max": 15000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Estimated from the width of the shell."
    },
    "maturityAge": {
     "value": 365,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found; a year is usual for crabs of this size."
    },
    "youngPerBrood": {
     "value": 10000,
     "unit": "1",
     "min": 5000,
     "max": 20000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Typical of mangrove crabs of this size."
    },
    "broodInterval": {
     "value": 60,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 18,
     "unit": "d",
     "min": 14,
     "max": 25,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1200,
     "unit": "d",
     "min": 700,
     "max": 1800,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.4,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 6,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "conductivity": {
     "low": {
      "value": 8000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "5 g/L of sea salt. Sea salt of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     },
     "high": {
      "value": 24000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "15 g/L of sea salt. Sea salt of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 330,
      "unit": "°dGH",
      "basis": "derived",
      "source": "sea water holds some 370 °dGH; this much at the saltiest it survives"
     }
    },
    "conductivity": {
     "low": {
      "value": 5500,
      "unit": "µS/cm",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "3 to 30 g/L; in fresh water it lasts for weeks and fades."
     },
     "high": {
      "value": 46000,
      "unit": "µS/cm",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.08,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.12,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 30,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.4,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.4,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.2,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 2400,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For a pair, about 80 × 30 cm."
    },
    "water": {
     "value": 15,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "height": {
     "value": 40,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 600,
     "unit": "cm²",
     "min": 500,
     "max": 1000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild; check what may be imported and sold where you live.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "It needs brackish water and land; a plain freshwater aquarium is a slow death.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never put crabs outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "periophthalmus-spp": {
   "id": "periophthalmus-spp",
   "name": "mudskippers",
   "about": "Fish that lives on the mud above the water, hunts by eye and digs burrows. Needs brackish water, a beach and warm, moist air; practically never bred in tanks.",
   "cautions": [
    "It walks on glass and jumps: seal every gap.",
    "It bites smaller animals of any kind, its own too."
   ],
   "scientificName": "Periophthalmus novemradiatus, P. variabilis, P. barbarus",
   "group": "amphibious fish",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "min": 1,
    "max": 4,
    "basis": "page",
    "source": "Page on mudskippers of a weblog on brackish water",
    "note": "One fish of P. barbarus; groups only of small Asian species."
   },
   "known": {
    "level": "fairly",
    "note": "Temperature limits and ammonia tolerance are studied; growth and egg numbers are recalled, and species differ in length by a factor of three. Numbers are for a small Asian species."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "brackish larvae",
   "active": {
    "when": "day",
    "basis": "published",
    "source": "Colombini, Berti, Nocita and Chelazzi 1996, on Periophthalmus sobrinus, abstract",
    "note": "Forages by day and night, much less after dark."
   },
   "lifeHistory": {
    "temperature": {
     "value": 27,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 85,
     "unit": "mm",
     "min": 80,
     "max": 250,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Indian dwarf about 80 mm, P. barbarus to 250 mm."
    },
    "adultMass": {
     "value": 5000,
     "unit": "mg",
     "min": 4000,
     "max": 120000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 365,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "youngPerBrood": {
     "value": 3000,
     "unit": "1",
     "min": 1000,
     "max": 10000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 60,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "No figure found."
    },
    "broodTime": {
     "value": 6.5,
     "unit": "d",
     "min": 5,
     "max": 8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1500,
     "unit": "d",
     "min": 1100,
     "max": 1900,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "conductivity": {
     "low": {
      "value": 13000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "8 g/L of sea salt: sea water of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     },
     "high": {
      "value": 28000,
      "unit": "µS/cm",
      "basis": "derived",
      "source": "reckoned from the other values named in the note",
      "note": "18 g/L of sea salt: sea water of 35 g/L conducts about 53 000 µS/cm; taken in proportion."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 25,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 12,
      "unit": "°dGH",
      "basis": "assumed",
      "source": "judgement of the author of this file, see the note",
      "note": "No figure found; taken as for crabs of mangroves."
     },
     "high": {
      "value": 380,
      "unit": "°dGH",
      "basis": "derived",
      "source": "sea water holds some 370 °dGH; this much at the saltiest it survives"
     }
    },
    "conductivity": {
     "low": {
      "value": 3700,
      "unit": "µS/cm",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "2 to 35 g/L."
     },
     "high": {
      "value": 53000,
      "unit": "µS/cm",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.5,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Dies at 1 to 10 mg/L: among the most ammonia-tolerant fish (Ip, Chew and co-workers)."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 0.5,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Breathes air."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 34,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 25,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.6,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.2,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.08,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "amphibians": {
      "value": 0.02,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.13,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 6000,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "120 × 50 cm for a small group."
    },
    "water": {
     "value": 30,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 1500,
     "unit": "cm²",
     "min": 1000,
     "max": 5000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "2000 to 5000 cm² of mud for each male; females and young share."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Caught in the wild; check what may be imported where you live.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "Dry air dries its skin, and a small tank makes it fight. It needs filtered brackish water and a wide beach.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "physella-acuta": {
   "id": "physella-acuta",
   "name": "bladder snail",
   "about": "Snail that comes along with plants as jelly clutches; eats films, algae and leftovers. Its numbers show how much food is left over.",
   "cautions": [
    "Comes with plants as clear jelly eggs; one snail founds a population.",
    "A cosmopolitan invader: never release it, its eggs or plants that carry them outdoors.",
    "Wild-collected pond snails can carry trematode larvae; use bred stock and wash hands."
   ],
   "scientificName": "Physella acuta",
   "group": "pulmonate snail",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "well",
    "note": "Egg time, growth, survival and egg output are measured at three temperatures. Body mass without shell and what it eats are not."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured"
   },
   "traits": {
    "referenceTemperature": {
     "value": 25,
     "unit": "°C",
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file"
    },
    "dryMassPerCube": {
     "value": 0.0055,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.003,
     "max": 0.01,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body of about 4 mg dry at 9 mm shell length."
    },
    "lengthAtBirth": {
     "value": 0.72,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.6,
     "max": 0.9,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 4.5,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.4,
     "min": 3.5,
     "max": 6,
     "basis": "published",
     "source": "Thomas and McClintock 1996, Malacologia 37: 333-348; abstract",
     "note": "Length at the age of first laying in a relative (Physella cubensis, 18 d at 25 °C); 2.7 mm is listed in the Add-my-Pet file."
    },
    "lengthAtEnd": {
     "value": 9.8,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.5,
     "min": 8.2,
     "max": 12,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file",
     "note": "Line through the lengths to 196 d at 25 °C."
    },
    "growthRate": {
     "value": 0.028,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 0.02,
     "max": 0.04,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file",
     "note": "Fits from day 35 on; the youngest grow slower than the line."
    },
    "shareToSoma": {
     "value": 0.88,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.8,
     "max": 0.94,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Gives the peak of about 21 eggs per snail and day (Nadasan 2011)."
    },
    "eggPerNewborn": {
     "value": 1.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 1.2,
     "max": 2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "page",
     "source": "What are these jelly dots under rocks? Web answers by R.T. Dillon"
    },
    "broodTime": {
     "value": 6,
     "unit": "d",
     "distribution": "normal",
     "spread": 0.4,
     "min": 5,
     "max": 7.5,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file"
    },
    "broodInterval": {
     "value": 2,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 1.2,
     "max": 4,
     "basis": "page",
     "source": "What are these jelly dots under rocks? Web answers by R.T. Dillon"
    },
    "breedingCoolest": {
     "value": 10,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1.5,
     "min": 6,
     "max": 14,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingWarmest": {
     "value": 33,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.8,
     "min": 31,
     "max": 35,
     "basis": "published",
     "source": "Thomas and McClintock 1996, Malacologia 37: 333-348; abstract",
     "note": "No laying at 35 °C in a relative."
    },
    "activationEnergy": {
     "value": 0.65,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.45,
     "max": 0.9,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Between egg time (0.45 eV) and age at first laying in a relative (0.9 eV)."
    },
    "broodActivationEnergy": {
     "value": 0.45,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.04,
     "min": 0.33,
     "max": 0.6,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file",
     "note": "Line through egg time at 20, 25 and 30 °C."
    },
    "heatLimit": {
     "value": 35,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 32.5,
     "max": 38,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.095,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.008,
     "min": 0.07,
     "max": 0.12,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.01,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.005,
     "max": 0.016,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.6,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.3,
     "max": 1.2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "20 to 60 mg dry per g wet and day, shell included."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.5,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.2,
     "max": 1.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.05,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.003,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0005,
     "max": 0.02,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.4,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnDetritus": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnLitter": {
     "value": 0.1,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.03,
     "min": 0.03,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.35,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.15,
     "max": 0.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 141,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 100,
     "max": 200,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file",
     "note": "Half are dead after 121 d at 25 °C, 155 d at 20 °C, 92 d at 30 °C."
    },
    "adultLoss": {
     "value": 0.0005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0001,
     "max": 0.003,
     "basis": "published",
     "source": "Nadasan 2011, Thesis, University of KwaZulu-Natal 2011; via the Add-my-Pet species file"
    },
    "juvenileLoss": {
     "value": 0.002,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.0003,
     "max": 0.012,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "99 % live to day 35 in single rearing; crowded hatchlings fare worse."
    },
    "broodLoss": {
     "value": 0.005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.001,
     "max": 0.03,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Hatching can reach 100 %."
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureHigh": {
     "value": 33,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.8,
     "min": 31,
     "max": 35.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 6.2,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 5.6,
     "max": 6.8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHHigh": {
     "value": 9,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8.4,
     "max": 9.8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.6,
     "min": 1.5,
     "max": 5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessHigh": {
     "value": 30,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 3,
     "min": 22,
     "max": 40,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Breathes air at the surface."
    },
    "oxygenMargin": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.15,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.05,
     "max": 0.4,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About one tenth of the lethal concentration."
    },
    "ammoniaMedianLethal": {
     "value": 1.7,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.8,
     "max": 3.4,
     "basis": "memory",
     "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)",
     "note": "Physa fontinalis, 96 h, as remembered."
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 8,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 2,
     "max": 30,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "crowdingHazard": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.003,
     "max": 0.04,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "copperMedianLethal": {
     "value": 43,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 18.5,
     "max": 120,
     "basis": "published",
     "source": "Arthur and Leonard 1970, Journal of the Fisheries Research Board of Canada 27: 1277-1283; abstract",
     "note": "Physa integra: 39 µg/L in soft water, taken as 45 mg/L hardness (memory) and brought to 50."
    },
    "saltHigh": {
     "value": 8.9,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.33,
     "min": 5.34,
     "max": 12.46,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "5 g/L."
    },
    "saltHighMargin": {
     "value": 3.1,
     "unit": "mS/cm",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1.72,
     "max": 5.58,
     "basis": "published",
     "source": "Kefford et al. 2003, Marine and Freshwater Research 54: 755-765; abstract",
     "note": "72-hour lethal 9 to 14 mS/cm of gastropods, worms and planarians."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four times the density cut the eggs of Biomphalaria snails by 72 to 75 % (McCreesh et al. 2014), and eggs fall with density however much food there is (Mangal et al. 2010); that half are left at the crowding density is judgement."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 2,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.15,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "Williams et al. 1986, Archiv für Hydrobiologie 106: 61-70 (recalled)"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 1,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Spread over the world with water plants. Never release it or plants it sat on.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Snails from outdoors, above all from warm countries, can be hosts of flukes: buy bred ones, wash hands, never eat them raw.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "planorbella-duryi": {
   "id": "planorbella-duryi",
   "name": "ramshorn snails",
   "about": "Disc-shaped snail that grazes films and algae and clears leftovers and dying plants; its numbers follow the food.",
   "cautions": [
    "Alien in much of the world: never release it, its eggs or plants that carry them outdoors.",
    "Wild-collected pond snails can carry trematode larvae; use bred stock and wash hands.",
    "Water poor in calcium or below pH 6.5 pits and dissolves the shell."
   ],
   "scientificName": "Planorbella duryi",
   "group": "pulmonate snail",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "fairly",
    "note": "Growth at three temperatures is measured. Egg output, body mass without shell and the need for hardness rest on memory."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "laid",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured"
   },
   "traits": {
    "referenceTemperature": {
     "value": 26,
     "unit": "°C",
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file"
    },
    "dryMassPerCube": {
     "value": 0.0104,
     "unit": "mg/mm³",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.005,
     "max": 0.02,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body of about 12 mg dry at 10.5 mm shell diameter."
    },
    "lengthAtBirth": {
     "value": 1,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.8,
     "max": 1.2,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file"
    },
    "lengthAtPuberty": {
     "value": 5,
     "unit": "mm",
     "distribution": "normal",
     "spread": 0.3,
     "min": 4.2,
     "max": 6,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file"
    },
    "lengthAtEnd": {
     "value": 11.5,
     "unit": "mm",
     "distribution": "lognormal",
     "spread": 1.1,
     "min": 9.5,
     "max": 16,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file",
     "note": "Line through the diameters to 112 d at 26 °C; some strains grow to 20 mm."
    },
    "growthRate": {
     "value": 0.0217,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 0.015,
     "max": 0.031,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file"
    },
    "shareToSoma": {
     "value": 0.92,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.015,
     "min": 0.86,
     "max": 0.96,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "Gives about five eggs a day in full-grown animals, the usual one mass of 10 to 30 eggs every few days (memory)."
    },
    "eggPerNewborn": {
     "value": 1.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 1.2,
     "max": 2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 10,
     "unit": "d",
     "distribution": "normal",
     "spread": 1.2,
     "min": 7,
     "max": 14,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "8 to 14 d at 25 °C."
    },
    "broodInterval": {
     "value": 3.5,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.25,
     "min": 2,
     "max": 7,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "breedingCoolest": {
     "value": 15,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1.5,
     "min": 11,
     "max": 18,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file",
     "note": "Almost no eggs at 10 °C, few at 18 °C."
    },
    "breedingWarmest": {
     "value": 31,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 28.5,
     "max": 34,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "activationEnergy": {
     "value": 0.85,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.65,
     "max": 1,
     "basis": "published",
     "source": "El-Emam and Madsen 1982, Hydrobiologia 88: 265-275; via the Add-my-Pet species file",
     "note": "Diameter at 56 d is 8.5 mm at 26 °C and 5.1 mm at 18 °C."
    },
    "broodActivationEnergy": {
     "value": 0.65,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.08,
     "min": 0.45,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "heatLimit": {
     "value": 34,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 31.5,
     "max": 37,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carbonContent": {
     "value": 0.4,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.02,
     "min": 0.33,
     "max": 0.47,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "nitrogenContent": {
     "value": 0.095,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.008,
     "min": 0.07,
     "max": 0.12,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorusContent": {
     "value": 0.01,
     "unit": "g/g",
     "distribution": "normal",
     "spread": 0.002,
     "min": 0.005,
     "max": 0.016,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maxIngestion": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.25,
     "max": 1,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "20 to 60 mg dry per g wet and day, shell included."
    },
    "halfSaturation": {
     "value": 0.05,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.015,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "A film of 1.4 g dry/m² on all submerged surfaces halves the intake."
    },
    "algaeRefuge": {
     "value": 0.02,
     "unit": "mol/m²",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.005,
     "max": 0.06,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About 0.5 g dry/m² of film stays in pits and as prostrate cells, 10 to 20 % of a usual film."
    },
    "preferenceForAlgae": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Weights for equal amounts on the ground. Feed counts far more because it lies in one place and animals gather at it: a decigram on half a square metre nearly sates."
    },
    "preferenceForDetritus": {
     "value": 0.5,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.2,
     "max": 1.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForLitter": {
     "value": 0.05,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForFeed": {
     "value": 60,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "preferenceForPlants": {
     "value": 0.01,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.001,
     "max": 0.05,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnAlgae": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.4,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "efficiencyOnDetritus": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnLitter": {
     "value": 0.1,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.03,
     "min": 0.03,
     "max": 0.2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnFeed": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.5,
     "max": 0.85,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "efficiencyOnPlants": {
     "value": 0.35,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.15,
     "max": 0.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "nutrientEfficiency": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.07,
     "min": 0.5,
     "max": 0.9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 400,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.15,
     "min": 280,
     "max": 560,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLoss": {
     "value": 0.002,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.0007,
     "max": 0.006,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "juvenileLoss": {
     "value": 0.006,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.002,
     "max": 0.02,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodLoss": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.002,
     "max": 0.04,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "starvedUpkeep": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.35,
     "max": 0.7,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note",
     "note": "With the two lines below it meets the survival of starved young Hyalella azteca (Soucek et al. 2013)."
    },
    "starvationCondition": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.05,
     "min": 0.45,
     "max": 0.78,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "starvationHazard": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "chosen so that the model meets the published figures named in the note"
    },
    "temperatureLow": {
     "value": 6,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 3,
     "max": 9,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureHigh": {
     "value": 32,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1,
     "min": 29.5,
     "max": 35,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "temperatureMargin": {
     "value": 3,
     "unit": "°C",
     "distribution": "normal",
     "spread": 0.7,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "How fast harm grows beyond the limits is not known; the margins are judgement."
    },
    "pHLow": {
     "value": 6.5,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 5.9,
     "max": 7,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHHigh": {
     "value": 9,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 8.4,
     "max": 9.8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pHMargin": {
     "value": 0.8,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.3,
     "max": 1.6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "hardnessLow": {
     "value": 5,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 3,
     "max": 7.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessHigh": {
     "value": 30,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 3,
     "min": 22,
     "max": 40,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "hardnessMargin": {
     "value": 3,
     "unit": "°dGH",
     "distribution": "normal",
     "spread": 0.8,
     "min": 1,
     "max": 6,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "oxygenNeeded": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Has a lung and haemoglobin."
    },
    "oxygenMargin": {
     "value": 1,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.5,
     "max": 2,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "ammoniaNoEffect": {
     "value": 0.15,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.05,
     "max": 0.4,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About one tenth of the lethal concentration."
    },
    "ammoniaMedianLethal": {
     "value": 1.75,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.8,
     "max": 3.5,
     "basis": "page",
     "source": "Arthur J.W. et al. (1987), as listed in a web table of acute ammonia toxicity normalised to pH 8 and 25 °C",
     "note": "Helisoma trivolvis, 32.5 mg total N/L at pH 8 and 25 °C, of which 5.4 % un-ionised."
    },
    "ammoniaRecovery": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.35,
     "max": 2.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Damage follows the water within one to two days, usual for small crustaceans."
    },
    "crowdingDensity": {
     "value": 4,
     "unit": "1/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 1,
     "max": 15,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "crowdingHazard": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.003,
     "max": 0.04,
     "basis": "assumed",
     "source": "judgement of the author of this file"
    },
    "copperMedianLethal": {
     "value": 43,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 18.5,
     "max": 150,
     "basis": "published",
     "source": "Arthur and Leonard 1970, Journal of the Fisheries Research Board of Canada 27: 1277-1283; abstract",
     "note": "Stand-in: Physa integra, 39 µg/L in soft water, brought to 50 mg/L hardness."
    },
    "saltHigh": {
     "value": 5.4,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 0.81,
     "min": 3.24,
     "max": 7.56,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "3 g/L."
    },
    "saltHighMargin": {
     "value": 6.6,
     "unit": "mS/cm",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 3.67,
     "max": 11.88,
     "basis": "published",
     "source": "Kefford et al. 2003, Marine and Freshwater Research 54: 755-765; abstract",
     "note": "72-hour lethal 9 to 14 mS/cm of gastropods, worms and planarians."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four times the density cut the eggs of Biomphalaria snails by 72 to 75 % (McCreesh et al. 2014), and eggs fall with density however much food there is (Mangal et al. 2010); that half are left at the crowding density is judgement."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 3,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.15,
      "unit": "mg N/L",
      "basis": "page",
      "source": "Arthur J.W. et al. (1987), as listed in a web table of acute ammonia toxicity normalised to pH 8 and 25 °C"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 5,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "From Florida, at large in many warm waters. Never release it or plants it sat on.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Snails from outdoors, above all from warm countries, can be hosts of flukes: buy bred ones, wash hands, never eat them raw.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "poecilia-wingei": {
   "id": "poecilia-wingei",
   "name": "Endler guppies",
   "about": "Lively, hardy fish of hard water that bears young every month and soon fills a tank.",
   "cautions": [
    "Numbers double within weeks: know who takes the young before you buy.",
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Poecilia wingei",
   "group": "livebearing fish",
   "leastFounders": {
    "value": 5,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "More females than males."
   },
   "known": {
    "level": "fairly",
    "note": "Taken from the closely related guppy, which is well studied, but recalled rather than read again."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 6,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 20,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 32,
     "unit": "mm",
     "min": 20,
     "max": 45,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Males 20 to 25 mm, females 30 to 45 mm."
    },
    "adultMass": {
     "value": 400,
     "unit": "mg",
     "min": 100,
     "max": 900,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 70,
     "unit": "d",
     "min": 50,
     "max": 90,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 15,
     "unit": "1",
     "min": 5,
     "max": 30,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 26,
     "unit": "d",
     "min": 23,
     "max": 28,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 25,
     "unit": "d",
     "min": 23,
     "max": 28,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 750,
     "unit": "d",
     "min": 500,
     "max": 1000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "nitriteMedianLethal": {
     "value": 9.2,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 2.8,
     "max": 25,
     "basis": "published",
     "source": "Doleželová et al. 2011, Acta Veterinaria Brno 80: 309-312; abstract",
     "note": "Guppy, 96 h: 30.2 mg/L of nitrite. The chloride of that water is not in the abstract; the same laboratory used 19 mg/L."
    },
    "copperMedianLethal": {
     "value": 125,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 53,
     "max": 400,
     "basis": "memory",
     "source": "US EPA 1985, Ambient water quality criteria for copper, EPA 440/5-84-031 (recalled)",
     "note": "Guppy, 96 h at 50 mg/L hardness."
    },
    "saltHigh": {
     "value": 17,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 2.55,
     "min": 10.2,
     "max": 23.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "10 g/L."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 4,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 10,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.05,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 8,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.05,
      "unit": "mg N/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Guppy fry die at 1.2 mg/L in three days (Rubin and Elmaraghy 1977)."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 2.5,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.1,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.65,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.25,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 54,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Its relatives have invaded warm waters over the world, and it crosses with guppies. Never release it.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "pomacea-diffusa": {
   "id": "pomacea-diffusa",
   "name": "spike-topped apple snails",
   "about": "Large snail with a lung and a breathing tube; eats leftovers, algae and dying plants, and lays its eggs above the water.",
   "cautions": [
    "The European Union forbids bringing in and spreading any snail of the genus Pomacea; where animals may still be kept, they may not be passed on.",
    "Clutches above the water are easily taken off: decide before they hatch."
   ],
   "scientificName": "Pomacea diffusa",
   "group": "apple snail",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 2.5,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Shells of small pulmonates weigh two to three times the dry body."
   },
   "shellMineral": "aragonite",
   "known": {
    "level": "fairly",
    "note": "Numbers of young come from an encyclopaedia, age at maturity from a larger relative; size, mass and growth are recalled."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "twilight",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "Active by day as well, most after dusk."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "published",
     "source": "Estebenet and Martin 2000, VI International Congress of Medical and Applied Malacology, abstract; on Pomacea canaliculata, a larger relative"
    },
    "lengthMeasure": "shell height",
    "lengthAtBirth": {
     "value": 3,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Hatchlings of apple snails are 2 to 4 mm."
    },
    "adultLength": {
     "value": 45,
     "unit": "mm",
     "min": 40,
     "max": 60,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 10000,
     "unit": "mg",
     "min": 6000,
     "max": 25000,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Soft body."
    },
    "dryPart": {
     "value": 0.15,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 130,
     "unit": "d",
     "min": 102,
     "max": 180,
     "basis": "published",
     "source": "Estebenet and Martin 2000, VI International Congress of Medical and Applied Malacology, abstract; on Pomacea canaliculata, a larger relative",
     "note": "102 to 114 d to first eggs with ample food; smaller young of this species are taken to need a little longer."
    },
    "youngPerBrood": {
     "value": 120,
     "unit": "1",
     "min": 50,
     "max": 200,
     "basis": "page",
     "source": "Encyclopaedia article on Pomacea bridgesii, a mirror of Wikipedia",
     "note": "200 is the most."
    },
    "broodInterval": {
     "value": 14,
     "unit": "d",
     "min": 7,
     "max": 21,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodTime": {
     "value": 20,
     "unit": "d",
     "min": 14,
     "max": 28,
     "basis": "page",
     "source": "Encyclopaedia article on Pomacea bridgesii, a mirror of Wikipedia"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 650,
     "unit": "d",
     "min": 365,
     "max": 1100,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "copperMedianLethal": {
     "value": 400,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 170,
     "max": 1600,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Between Melanoides and Campeloma decisum, 1700 µg/L in soft water (Arthur and Leonard 1970): snails that shut their shells bear more than those without a lid."
    },
    "saltHigh": {
     "value": 3.6,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 0.54,
     "min": 2.16,
     "max": 5.04,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "2 g/L."
    },
    "crowdedEggs": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four times the density cut the eggs of Biomphalaria snails by 72 to 75 % (McCreesh et al. 2014), and eggs fall with density however much food there is (Mangal et al. 2010); that half are left at the crowding density is judgement."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 4,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 6,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "Breathes air."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "biofilm": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "snails",
   "place": {
    "water": {
     "value": 0.9,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": false,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "water": {
     "value": 40,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "Snails of the genus Pomacea shall not be introduced into or spread within the European Union.",
     "basis": "published",
     "source": "Commission Implementing Decision 2012/697/EU, article 1"
    },
    {
     "kind": "zoonosis",
     "text": "Snails from outdoors, above all from warm countries, can be hosts of flukes and lungworm: buy bred ones, wash hands, never eat them raw.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "It climbs out to lay eggs; never release snails or eggs.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "porcellio-scaber": {
   "id": "porcellio-scaber",
   "name": "rough woodlice",
   "about": "Clean-up crew of the land half: eats leaf litter, mould, dead plants and leftovers. Lives under bark and leaves and comes out at night.",
   "cautions": [
    "Woodlice drown in open water without a slope to climb out by.",
    "Hungry groups eat seedlings and soft plants."
   ],
   "scientificName": "Porcellio scaber",
   "group": "terrestrial isopod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Size, growth of females and brood range are published; age at maturity is an estimate of a compiler and food intake is recalled."
   },
   "habitat": "land",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Stays under bark and leaves by day, where it may eat too."
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 9,
     "unit": "mm",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file",
     "note": "Females of that thesis at 12 to 14 mm; other strains breed at 8 to 10 mm, which is what keepers see."
    },
    "adultLength": {
     "value": 14,
     "unit": "mm",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file"
    },
    "adultMass": {
     "value": 60,
     "unit": "mg",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file"
    },
    "dryPart": {
     "value": 0.3,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 120,
     "unit": "d",
     "basis": "derived",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file",
     "note": "Females grew from 3.2 to 26.9 mg in 126 d at 20 °C; the curve through these reaches 9 mm some 120 d after release. A compiler puts first breeding at 400 d, which field animals need."
    },
    "youngPerBrood": {
     "value": 35,
     "unit": "1",
     "basis": "published",
     "source": "Antol and Czarnoleski 2018, range 7 to 106; abstract"
    },
    "broodInterval": {
     "value": 90,
     "unit": "d",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file",
     "note": "About three broods a year; held by season in the wild."
    },
    "broodTime": {
     "value": 35,
     "unit": "d",
     "basis": "published",
     "source": "Donker 1992, PhD thesis, VU University Amsterdam; via the Add-my-Pet species file"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 900,
     "unit": "d",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "activationEnergy": {
     "value": 1.1,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.8,
     "max": 1.4,
     "basis": "derived",
     "source": "Horváthová et al. 2015, ZooKeys 515: 67-79; abstract",
     "note": "Juvenile growth almost three times faster at 22 than at 15 °C."
    },
    "broodActivationEnergy": {
     "value": 1.15,
     "unit": "eV",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.8,
     "max": 1.45,
     "basis": "derived",
     "source": "Horváthová et al. 2015, ZooKeys 515: 67-79; abstract",
     "note": "Time in the pouch almost three times shorter at 22 than at 15 °C."
    },
    "humidityLow": {
     "value": 90,
     "unit": "%",
     "distribution": "normal",
     "spread": 1,
     "min": 86,
     "max": 93,
     "basis": "derived",
     "source": "Edney 1951, Journal of Experimental Biology 28: 91-115 (recalled)",
     "note": "Loses some 110 µg of water per cm² and hour and mmHg: at 75 % and 20 °C about 1.5 % of its mass an hour, a third of it, which kills, in about a day."
    },
    "humidityMargin": {
     "value": 7.5,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 4.17,
     "max": 13.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.95,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 0,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 35,
      "unit": "°C",
      "basis": "memory",
      "source": "measured on Porcellio spinicornis: no growth above 35 °C"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.25,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "litter": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "fungi": {
     "value": 0.12,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "plants": {
     "value": 0.03,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "feed": {
     "value": 0.05,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "land": {
     "value": 0.6,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "canopy": {
     "value": 0.05,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "burrow": {
     "value": 0.3,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "ways": {
    "needsTightLid": false,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 400,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "water": {
     "value": 0,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 2,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures hold hundreds on a few square decimetres."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Found over most of the world; no licence is known to be needed. Check where you live.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the species is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "porcellionides-pruinosus": {
   "id": "porcellionides-pruinosus",
   "name": "powder woodlice",
   "about": "Fast, prolific woodlouse of warm, airy litter; clean-up crew and food for frogs and lizards.",
   "cautions": [
    "Hungry groups eat seedlings.",
    "Woodlice drown in open water without a slope to climb out by."
   ],
   "scientificName": "Porcellionides pruinosus",
   "group": "terrestrial isopod",
   "leastFounders": {
    "value": 10,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Size, life span and broods of relatives are in print; growth, pace and mass are told by keepers or recalled."
   },
   "habitat": "land",
   "mating": "two sexes",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Bolder by day than other woodlice."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 1.6,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 10,
     "unit": "mm",
     "min": 5,
     "max": 12,
     "basis": "page",
     "source": "Species page on Porcellionides pruinosus of Wabash River Reptiles"
    },
    "adultMass": {
     "value": 22,
     "unit": "mg",
     "min": 10,
     "max": 40,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.3,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 65,
     "unit": "d",
     "min": 50,
     "max": 80,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 25,
     "unit": "1",
     "min": 5,
     "max": 50,
     "basis": "page",
     "source": "Web page on the broods of isopods of the site Biology Insights",
     "note": "Up to 50; four southern African woodlice bear 5 to 20 (Dangerfield and Telford 1995)."
    },
    "broodInterval": {
     "value": 34,
     "unit": "d",
     "min": 28,
     "max": 40,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodTime": {
     "value": 20,
     "unit": "d",
     "min": 16,
     "max": 25,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.6,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked",
     "note": "Females outnumber males in a Tunisian population (Crustaceana 2002, abstract)."
    },
    "lifespan": {
     "value": 380,
     "unit": "d",
     "min": 335,
     "max": 430,
     "basis": "published",
     "source": "Study of Porcellionides pruinosus at Garat Nâam, Tunisia, Crustaceana 2002, doi 10.1163/156854002321518171, abstract",
     "note": "11 to 14 months; those born in summer and autumn live longer."
    }
   },
   "traits": {
    "humidityLow": {
     "value": 87,
     "unit": "%",
     "distribution": "normal",
     "spread": 1.5,
     "min": 83,
     "max": 90,
     "basis": "assumed",
     "source": "Edney 1951, Journal of Experimental Biology 28: 91-115 (recalled)",
     "note": "Loses less water than its relatives (Hadley and Quinlan 1984; abstract); half dead in about two days at 75 %."
    },
    "humidityMargin": {
     "value": 9,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 5,
     "max": 16.2,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.95,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 55,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 95,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.08,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.6,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.3,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 300,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 1,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures hold hundreds on a few square decimetres."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Found over most of the warm world; no licence is known to be needed.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "procambarus-virginalis": {
   "id": "procambarus-virginalis",
   "name": "marbled crayfish",
   "about": "Listed so that a plan with it can be refused: one animal founds a population, and keeping it is forbidden in the European Union.",
   "cautions": [
    "Forbidden in the European Union: must not be kept, bred, sold, given away or released.",
    "Where you find you have one, ask the authority what to do; never put it into open water."
   ],
   "scientificName": "Procambarus virginalis",
   "group": "crayfish",
   "leastFounders": {
    "value": 1,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "shell": {
    "value": 0.35,
    "unit": "1",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "Mineral of cuticles is 10 to 40 % of dry mass."
   },
   "known": {
    "level": "well",
    "note": "Growth, eggs and life span are measured in the laboratory; food and tolerance of water are told by keepers or recalled."
   },
   "habitat": "water",
   "mating": "self-fertile",
   "brood": "carried",
   "active": {
    "when": "night",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "published",
     "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 5.7,
     "unit": "mm",
     "min": 3.5,
     "max": 5.7,
     "basis": "published",
     "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file",
     "note": "At independence; 3.5 mm at hatching."
    },
    "lengthAtPuberty": {
     "value": 40,
     "unit": "mm",
     "basis": "published",
     "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file"
    },
    "adultLength": {
     "value": 70,
     "unit": "mm",
     "min": 40,
     "max": 103,
     "basis": "published",
     "source": "Vogt et al. 2015, Biology Open 4: 1583-1594; via the Add-my-Pet species file"
    },
    "adultMass": {
     "value": 9500,
     "unit": "mg",
     "min": 1540,
     "max": 30000,
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "30 g at the largest laboratory length of 103 mm (Vogt et al. 2015), in proportion to length cubed."
    },
    "maturityAge": {
     "value": 200,
     "unit": "d",
     "min": 141,
     "max": 255,
     "basis": "published",
     "source": "Seitz et al. 2005, Journal of Experimental Zoology A 303: 393-405; via the Add-my-Pet species file"
    },
    "youngPerBrood": {
     "value": 200,
     "unit": "1",
     "min": 150,
     "max": 416,
     "basis": "published",
     "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file",
     "note": "150 to 270 common in larger animals, up to 416 at 25 to 35 mm of carapace (Seitz et al. 2005)."
    },
    "broodInterval": {
     "value": 60,
     "unit": "d",
     "min": 56,
     "max": 63,
     "basis": "page",
     "source": "Web page on marbled crayfish of SureScreen Scientifics, an environmental testing company"
    },
    "broodTime": {
     "value": 45,
     "unit": "d",
     "min": 28,
     "max": 60,
     "basis": "published",
     "source": "Vogt and Tolley 2004, Journal of Morphology 262: 566-582; via the Add-my-Pet species file",
     "note": "Eggs 17 to 22 d, then 11 to 38 d of young on the mother."
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "published",
     "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file"
    },
    "lifespan": {
     "value": 900,
     "unit": "d",
     "min": 700,
     "max": 1154,
     "basis": "published",
     "source": "Vogt 2010, Biogerontology 11: 643-669; via the Add-my-Pet species file",
     "note": "1154 d is the mean of the longest-lived tenth."
    }
   },
   "traits": {
    "nitriteMedianLethal": {
     "value": 28,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 9,
     "max": 90,
     "basis": "memory",
     "source": "Gutzmer and Tomasso 1985, Bulletin of Environmental Contamination and Toxicology 34: 369-376 (recalled)",
     "note": "Procambarus clarkii, 96 h."
    },
    "copperMedianLethal": {
     "value": 1000,
     "unit": "µg/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 420,
     "max": 3500,
     "basis": "memory",
     "source": "US EPA 1985, Ambient water quality criteria for copper, EPA 440/5-84-031 (recalled)",
     "note": "Procambarus clarkii and other crayfish, 96 h at 50 mg/L hardness: a thousand and more."
    },
    "saltHigh": {
     "value": 10.5,
     "unit": "mS/cm",
     "distribution": "normal",
     "spread": 1.57,
     "min": 6.3,
     "max": 14.7,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "6 g/L."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "published",
      "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file"
     },
     "high": {
      "value": 25,
      "unit": "°C",
      "basis": "published",
      "source": "Vogt, Tolley and Scholtz 2004, Journal of Morphology 261: 286-311; via the Add-my-Pet species file"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 9,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 4,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "oxygenLow": {
     "low": {
      "value": 1,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "published",
      "source": "Seitz et al. 2005, Journal of Experimental Zoology A 303: 393-405; via the Add-my-Pet species file",
      "note": "Grows at 15 to 30 °C; also lived through a simulated winter of six and a half months (Vesely et al. 2015)."
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "published",
      "source": "Seitz et al. 2005, Journal of Experimental Zoology A 303: 393-405; via the Add-my-Pet species file"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.2,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "plants": {
     "value": 0.25,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.19,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 1,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "largest": {
     "value": 40,
     "unit": "mm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "kinds": {
     "small arthropods": {
      "value": 0.25,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.2,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "snails": {
      "value": 0.4,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "fish": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "crustaceans",
   "place": {
    "water": {
     "value": 0.93,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "margin": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": true,
    "moults": true,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "water": {
     "value": 60,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 400,
     "unit": "cm²",
     "min": 400,
     "max": 800,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "On the list of invasive alien species of Union concern: in the European Union it must not be kept, bred, transported, sold or released.",
     "basis": "page",
     "source": "List of invasive alien species of Union concern under Regulation (EU) 1143/2014, encyclopaedia table read 2026"
    },
    {
     "kind": "law",
     "text": "Also regulated elsewhere, for example in the United Kingdom and several states of the USA.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "disease",
     "text": "American crayfish can carry crayfish plague, which kills European crayfish; no animal, water, net or plant of theirs may reach open water.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "It walks over land and a single animal founds a population.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "ranitomeya-spp": {
   "id": "ranitomeya-spp",
   "name": "thumbnail dart frogs",
   "about": "Frog of two centimetres that lives among bromeliads, eats the smallest insects and carries its tadpoles to leaf axils.",
   "cautions": [
    "It leaves through gaps of 2 mm.",
    "It needs springtails and the smallest flies every day."
   ],
   "scientificName": "Ranitomeya variabilis and R. imitator",
   "group": "dart frog",
   "leastFounders": {
    "value": 2,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "fairly",
    "note": "Development and survival to the froglet are published for one species; size, mass and maturity are recalled or told by keepers. Insects that the keeper puts in count as feed here, insects that live in the enclosure as prey."
   },
   "habitat": "amphibious",
   "mating": "two sexes",
   "brood": "laid",
   "development": "water larvae",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 24,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "snout to vent",
    "lengthAtBirth": {
     "value": 4.3,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The length at which a body of the shape of the adult weighs 8 mg, as a hatchling does (memory)."
    },
    "lengthAtPuberty": {
     "value": 14,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Four fifths of full length."
    },
    "adultLength": {
     "value": 17,
     "unit": "mm",
     "min": 14,
     "max": 20,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 500,
     "unit": "mg",
     "min": 300,
     "max": 800,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 300,
     "unit": "d",
     "min": 240,
     "max": 360,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 4,
     "unit": "1",
     "min": 2,
     "max": 6,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodInterval": {
     "value": 12,
     "unit": "d",
     "min": 10,
     "max": 14,
     "basis": "page",
     "source": "Pages on the breeding of poison dart frogs of The Environmental Literacy Council"
    },
    "broodTime": {
     "value": 14,
     "unit": "d",
     "min": 12,
     "max": 16,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 2500,
     "unit": "d",
     "min": 1800,
     "max": 3650,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthAtChange": {
     "value": 7.6,
     "unit": "mm",
     "basis": "derived",
     "source": "reckoned from the other values named in the note",
     "note": "The growth rule knows one speed for larva and grown animal, so this is not the true length at the change but the one that puts the change at the published age. Egg and tadpole together take 79 to 91 d (Regnet et al. 2023)."
    }
   },
   "traits": {
    "juvenileLoss": {
     "value": 0.009,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.004,
     "max": 0.02,
     "basis": "derived",
     "source": "Regnet, Rech, Rödder and Solé 2023, ZooKeys, article 98603, on Ranitomeya variabilis",
     "note": "46 % live to the change after 79 to 91 d."
    }
   },
   "tolerances": {
    "nitrate": {
     "high": {
      "value": 10,
      "unit": "mg N/L",
      "basis": "published",
      "source": "Camargo, Alonso and Salamanca 2005, Chemosphere 58: 1255-1267; abstract",
      "note": "10 mg N/L can harm larvae of frogs and toads over long times; shown on Rana, Bufo and Pseudacris."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 22,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 0.2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 70,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 2.5,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "small arthropods": {
      "value": 1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "amphibians",
   "place": {
    "margin": {
     "value": 0.03,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.45,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "canopy": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.02,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": true,
    "jumps": true,
    "needsTightLid": true,
    "needsWayOut": true,
    "moults": false,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 2000,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "For a pair."
    },
    "height": {
     "value": 45,
     "unit": "cm",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 700,
     "unit": "cm²",
     "min": 500,
     "max": 2000,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Listed in CITES Appendix II: keep the papers that come with the frog.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "handling",
     "text": "Frogs bred in captivity on flour-fed flies carry no alkaloids; wild ones do. Handle neither more than needed: the skin takes up everything.",
     "basis": "page",
     "source": "Pages on captive-bred dart frogs of The Environmental Literacy Council"
    },
    {
     "kind": "zoonosis",
     "text": "Amphibians and reptiles can carry salmonella without looking ill: wash hands after touching animal, water or furnishing, keep them out of the kitchen and away from small children and people with weak immune systems.",
     "basis": "memory",
     "source": "advice of public health bodies on pet reptiles and amphibians, recalled"
    },
    {
     "kind": "disease",
     "text": "Animals caught outdoors bring parasites and, among amphibians, chytrid fungi and ranavirus; take tested, captive-bred stock and keep newcomers apart for some weeks.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "welfare",
     "text": "A sick or hurt animal belongs to a vet who treats its kind; find one before you buy.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "escape",
     "text": "Never release it outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "tanichthys-albonubes": {
   "id": "tanichthys-albonubes",
   "name": "White Cloud minnows",
   "about": "Small shoaling fish of cool hill streams; lives in unheated rooms and breeds among plants.",
   "cautions": [
    "Not above 24 °C for long: a heated room in summer is too warm.",
    "It jumps: keep the cover shut."
   ],
   "scientificName": "Tanichthys albonubes",
   "group": "fish",
   "leastFounders": {
    "value": 8,
    "unit": "1",
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "known": {
    "level": "poorly",
    "note": "No measured growth or egg numbers were found; all of it is general knowledge of the trade and of fish culture."
   },
   "habitat": "water",
   "mating": "two sexes",
   "brood": "laid",
   "active": {
    "when": "day",
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "lifeHistory": {
    "temperature": {
     "value": 20,
     "unit": "°C",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthMeasure": "total length",
    "lengthAtBirth": {
     "value": 3.8,
     "unit": "mm",
     "min": 3,
     "max": 4.2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lengthAtPuberty": {
     "value": 24,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultLength": {
     "value": 35,
     "unit": "mm",
     "min": 30,
     "max": 40,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "adultMass": {
     "value": 450,
     "unit": "mg",
     "min": 300,
     "max": 600,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 160,
     "unit": "d",
     "min": 120,
     "max": 200,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "youngPerBrood": {
     "value": 25,
     "unit": "1",
     "min": 10,
     "max": 40,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "broodInterval": {
     "value": 7,
     "unit": "d",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Bouts of spawning about once a week, when fed well."
    },
    "broodTime": {
     "value": 2.5,
     "unit": "d",
     "min": 1.5,
     "max": 3,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "femaleShare": {
     "value": 0.5,
     "unit": "1",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "lifespan": {
     "value": 1300,
     "unit": "d",
     "min": 1000,
     "max": 1800,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "traits": {
    "broodLoss": {
     "value": 0.4,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.15,
     "max": 0.5,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Parents and others eat most scattered eggs: about a third of those laid hatch."
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "KH": {
     "low": {
      "value": 0,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dKH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 5,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 4,
      "unit": "mg/L",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 22,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "survives": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "unionisedAmmonia": {
     "high": {
      "value": 0.04,
      "unit": "mg N/L",
      "min": 0.02,
      "max": 0.05,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice of fish culture, not measured on this species. Carp fry die at 1.7 to 1.8 mg/L in four days (Hasan and Macintosh 1986); taken as for small fish in general."
     }
    },
    "oxygenLow": {
     "low": {
      "value": 3,
      "unit": "mg/L",
      "min": 2,
      "max": 4,
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked",
      "note": "General advice for small fish."
     }
    },
    "waterTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "diet": {
    "algae": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "detritus": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.55,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "prey": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "prey": {
    "smallest": {
     "value": 0.2,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "largest": {
     "value": 3,
     "unit": "mm",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "kinds": {
     "plankton": {
      "value": 0.6,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "small arthropods": {
      "value": 0.25,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "crustaceans": {
      "value": 0.1,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     },
     "worms": {
      "value": 0.05,
      "unit": "1",
      "basis": "assumed",
      "source": "judged from what the animal is described to eat, not measured"
     }
    }
   },
   "preyKind": "fish",
   "place": {
    "water": {
     "value": 1,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": true,
    "needsTightLid": true,
    "moults": false,
    "eatsOwnKind": "when hungry"
   },
   "space": {
    "floor": {
     "value": 1800,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source",
     "note": "60 cm of swimming length."
    },
    "water": {
     "value": 54,
     "unit": "L",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "Nearly gone from the wild; the trade lives on bred fish.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never release fish, their eggs or their water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    {
     "kind": "zoonosis",
     "text": "Wash hands after work in the water and keep it away from mouth and open wounds.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "trichorhina-tomentosa": {
   "id": "trichorhina-tomentosa",
   "name": "dwarf white woodlice",
   "about": "Woodlouse of three millimetres, all female, that lives in wet soil and litter and takes mould, leaves and leftovers.",
   "scientificName": "Trichorhina tomentosa",
   "group": "terrestrial isopod",
   "leastFounders": {
    "value": 5,
    "unit": "1",
    "min": 1,
    "max": 20,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source",
    "note": "One is enough; five make it quick."
   },
   "known": {
    "level": "poorly",
    "note": "Size is in an encyclopaedia, brood size is published for a close relative; growth and pace are told by keepers."
   },
   "habitat": "land",
   "mating": "self-fertile",
   "brood": "carried",
   "active": {
    "when": "always",
    "basis": "assumed",
    "source": "judged from what the animal is described to do, not measured",
    "note": "Pale and nearly blind, lives in the ground."
   },
   "lifeHistory": {
    "temperature": {
     "value": 25,
     "unit": "°C",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "lengthMeasure": "body length",
    "lengthAtBirth": {
     "value": 0.9,
     "unit": "mm",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "About a third of full length, as in other small woodlice."
    },
    "adultLength": {
     "value": 3,
     "unit": "mm",
     "min": 2,
     "max": 5,
     "basis": "page",
     "source": "Encyclopaedia article on Trichorhina tomentosa, a mirror of Wikipedia"
    },
    "adultMass": {
     "value": 1,
     "unit": "mg",
     "min": 0.4,
     "max": 2,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryPart": {
     "value": 0.3,
     "unit": "g/g",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "maturityAge": {
     "value": 70,
     "unit": "d",
     "min": 50,
     "max": 90,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "youngPerBrood": {
     "value": 6,
     "unit": "1",
     "min": 4,
     "max": 15,
     "basis": "published",
     "source": "Description of Trichorhina donaldsoni, a parthenogenetic relative from Florida, 44 broods, abstract",
     "note": "5.9 on average; keepers say 4 to 15."
    },
    "broodInterval": {
     "value": 38,
     "unit": "d",
     "min": 30,
     "max": 45,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "broodTime": {
     "value": 24,
     "unit": "d",
     "min": 18,
     "max": 30,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "femaleShare": {
     "value": 1,
     "unit": "1",
     "basis": "page",
     "source": "Encyclopaedia article on Trichorhina tomentosa, a mirror of Wikipedia"
    },
    "lifespan": {
     "value": 450,
     "unit": "d",
     "min": 250,
     "max": 700,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "traits": {
    "humidityLow": {
     "value": 93,
     "unit": "%",
     "distribution": "normal",
     "spread": 1,
     "min": 89,
     "max": 96,
     "basis": "assumed",
     "source": "Edney 1951, Journal of Experimental Biology 28: 91-115 (recalled)",
     "note": "Small and soft-skinned, so drier sooner than Porcellio: half dead within a third of a day at 75 %."
    },
    "humidityMargin": {
     "value": 5,
     "unit": "%",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 2.78,
     "max": 9,
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Set by how long it lasts in dry air, as the note above tells."
    },
    "moistShelter": {
     "value": 0.97,
     "unit": "1",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Lives in the pores of moist ground and litter, whose air is nearly saturated."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "survives": {
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "diet": {
    "detritus": {
     "value": 0.4,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "litter": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "fungi": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "feed": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    },
    "carrion": {
     "value": 0.05,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from what the animal is described to eat, not measured"
    }
   },
   "preyKind": "small arthropods",
   "place": {
    "margin": {
     "value": 0.15,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "land": {
     "value": 0.35,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    },
    "burrow": {
     "value": 0.5,
     "unit": "1",
     "basis": "assumed",
     "source": "judged from the described habit of the animal, not measured"
    }
   },
   "ways": {
    "climbsGlass": false,
    "jumps": false,
    "needsTightLid": false,
    "needsWayOut": true,
    "moults": true,
    "eatsOwnKind": "never"
   },
   "space": {
    "floor": {
     "value": 100,
     "unit": "cm²",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "groundPerAdult": {
     "value": 0.3,
     "unit": "cm²",
     "basis": "assumed",
     "source": "judgement of the author of this file, see the note",
     "note": "Cultures hold several on a square centimetre."
    }
   },
   "risks": [
    {
     "kind": "law",
     "text": "From the American tropics, spread over the world in pots; no licence is known to be needed.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put surplus animals outdoors, even where the kind is common.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  }
 },
 "plants": {
  "acorus-gramineus": {
   "id": "acorus-gramineus",
   "name": "sweet flag",
   "about": "Grass-like plant of wet gravel, the crown just above the water; starves slowly when sunk.",
   "scientificName": "Acorus gramineus",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 25,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 120,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 500,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.01,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.003,
    "max": 0.02,
    "basis": "memory",
    "source": "estimated from its kind: 0.003 to 0.02 per day"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.2,
     "unit": "%",
     "min": 1.4,
     "max": 3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.3,
     "unit": "%",
     "min": 0.2,
     "max": 0.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 20,
     "unit": "%",
     "min": 16,
     "max": 26,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Removal of nitrate by a relative is published; growth and tissue are estimated."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Its relative A. calamus holds asarone: not for eating.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "anubias-barteri": {
   "id": "anubias-barteri",
   "name": "anubias",
   "about": "Tough, slow plant with a rhizome tied to wood or stone; stands shade, grazing and wet feet. Old leaves grow algae.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Anubias barteri",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 8,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 35,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 120,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.006,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.002,
    "max": 0.012,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "Submerged plants of temperate waters grow 0.007 to 0.109 a day with rich carbon and nutrients (Nielsen and Sand-Jensen 1991)."
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "breakdown": {
    "value": 0.25,
    "unit": "1",
    "min": 0.1,
    "max": 0.6,
    "basis": "assumed",
    "source": "leathery leaves; between soft shoots and wet-rooted plants"
   },
   "tissue": {
    "nitrogen": {
     "value": 2,
     "unit": "%",
     "min": 1.4,
     "max": 2.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.3,
     "unit": "%",
     "min": 0.15,
     "max": 0.4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 14,
     "unit": "%",
     "min": 10,
     "max": 18,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Of the arum family, whose leaves often hold needles of calcium oxalate: take it as irritant when chewed.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "asplenium-scolopendrium": {
   "id": "asplenium-scolopendrium",
   "name": "hart's-tongue fern",
   "about": "Fern of limy, shady rock and moist humus; likes cool rooms.",
   "scientificName": "Asplenium scolopendrium",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 5,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    },
    "good": {
     "value": 25,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    }
   },
   "growth": {
    "value": 0.008,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.003,
    "max": 0.02,
    "basis": "memory",
    "source": "estimated from slow ferns: 0.003 to 0.02 per day"
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 0,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "All values are recalled or judged; none was read again for this file."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "bacopa-monnieri": {
   "id": "bacopa-monnieri",
   "name": "water hyssop",
   "about": "Upright stem plant of slow growth for water and margin.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Bacopa monnieri, B. caroliniana",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 20,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 90,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 500,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.006,
    "max": 0.045,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.8,
     "unit": "%",
     "min": 1.8,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.2,
     "max": 0.7,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 11,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "begonia-bowerae": {
   "id": "begonia-bowerae",
   "name": "small begonias",
   "about": "Creeping begonias for airy humus, the rhizome on top; mildew comes in stale air.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Begonia bowerae, B. schulzei and others",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 200,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.014,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.005,
    "max": 0.028,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.5,
     "unit": "%",
     "min": 2.5,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.7,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 7,
     "unit": "%",
     "min": 5,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Begonias hold soluble oxalates, most in the roots: harmful to pets that chew them.",
     "basis": "page",
     "source": "Plant safety page of The Bradford Era, 2023"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "bolbitis-heudelotii": {
   "id": "bolbitis-heudelotii",
   "name": "African water fern",
   "about": "Dark fern tied to wood or stone that likes a current; slow.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Bolbitis heudelotii",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 45,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.008,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.003,
    "max": 0.015,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "breakdown": {
    "value": 0.25,
    "unit": "1",
    "min": 0.1,
    "max": 0.6,
    "basis": "assumed",
    "source": "leathery leaves; between soft shoots and wet-rooted plants"
   },
   "tissue": {
    "nitrogen": {
     "value": 2,
     "unit": "%",
     "min": 1.4,
     "max": 2.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.3,
     "unit": "%",
     "min": 0.2,
     "max": 0.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 14,
     "unit": "%",
     "min": 10,
     "max": 18,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 10,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "bucephalandra-spp": {
   "id": "bucephalandra-spp",
   "name": "bucephalandra",
   "about": "Small, slow stream plant for stone and wood, under water or in the splash zone.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Bucephalandra",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 8,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 120,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.004,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.001,
    "max": 0.008,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "breakdown": {
    "value": 0.25,
    "unit": "1",
    "min": 0.1,
    "max": 0.6,
    "basis": "assumed",
    "source": "leathery leaves; between soft shoots and wet-rooted plants"
   },
   "tissue": {
    "nitrogen": {
     "value": 1.9,
     "unit": "%",
     "min": 1.4,
     "max": 2.6,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.25,
     "unit": "%",
     "min": 0.15,
     "max": 0.4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 14,
     "unit": "%",
     "min": 10,
     "max": 18,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.6,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Many are dug from streams on Borneo; ask for plants from culture.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "toxin",
     "text": "Of the arum family, whose leaves often hold needles of calcium oxalate: take it as irritant when chewed.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "ceratophyllum-demersum": {
   "id": "ceratophyllum-demersum",
   "name": "hornwort",
   "about": "Rootless plant that floats in the water and takes its nutrients from it; fast, shades and outgrows algae.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Ceratophyllum demersum",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    },
    "good": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    }
   },
   "bicarbonate": {
    "value": 1,
    "unit": "1",
    "basis": "published",
    "source": "Best 1986 (abstract): carbon was fixed faster at pH 8.0 than at 6.5; a user of bicarbonate in every list, Maberly & Madsen 1998 (recalled)"
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 9.5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 30,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 4,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "All values are recalled or judged; none was read again for this file."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "A weed of lakes and canals in New Zealand and elsewhere; breaks and regrows from every piece. Never put it outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "cryptocoryne-wendtii": {
   "id": "cryptocoryne-wendtii",
   "name": "cryptocoryne",
   "about": "Rosette for shade that roots in rich sand or soil; may drop all leaves after a move and grow anew.",
   "cautions": [
    "Never release plants or cuttings outdoors.",
    "Plants of the arum family can irritate mouth and skin when bitten or cut."
   ],
   "scientificName": "Cryptocoryne wendtii",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 45,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 200,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.012,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.003,
    "max": 0.03,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "Submerged plants of temperate waters grow 0.007 to 0.109 a day with rich carbon and nutrients (Nielsen and Sand-Jensen 1991)."
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.5,
     "unit": "%",
     "min": 1.6,
     "max": 3.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.2,
     "max": 0.6,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 10,
     "unit": "%",
     "min": 8,
     "max": 13,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Of the arum family, whose leaves often hold needles of calcium oxalate: take it as irritant when chewed.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "invasive",
     "text": "A relative, C. beckettii, runs wild in springs of Texas and Florida. Never put plants outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "cyperus-alternifolius": {
   "id": "cyperus-alternifolius",
   "name": "umbrella sedge",
   "about": "Tall sedge with roots in the water that wants light and headroom and takes up much.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Cyperus alternifolius",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 1000,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.04,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 2,
     "unit": "%",
     "min": 1.2,
     "max": 2.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.3,
     "unit": "%",
     "min": 0.2,
     "max": 0.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 22,
     "unit": "%",
     "min": 18,
     "max": 28,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "Weedy in warm wetlands. Never put it outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "elodea-nuttallii": {
   "id": "elodea-nuttallii",
   "name": "Nuttall's waterweed",
   "about": "Fast waterweed of cool, hard water.",
   "cautions": [
    "Never release plants or cuttings outdoors.",
    "Elodea nuttallii is an invasive species of Union concern: in the European Union it may not be kept or passed on."
   ],
   "scientificName": "Elodea nuttallii",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    },
    "good": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    }
   },
   "bicarbonate": {
    "value": 1,
    "unit": "1",
    "basis": "published",
    "source": "Jones 2005 (abstract): switches to bicarbonate where carbon dioxide is scarce"
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 6.5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 9.5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "GH": {
     "low": {
      "value": 3,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 4,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "All values are recalled or judged; none was read again for this file."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "On the Union list of invasive species: in the European Union it must not be kept, sold, passed on or released.",
     "basis": "page",
     "source": "EPPO Reporting Service 2022/178 on Regulation (EU) 1143/2014 and its list of invasive alien species of Union concern"
    }
   ]
  },
  "epipremnum-aureum": {
   "id": "epipremnum-aureum",
   "name": "pothos",
   "about": "Roots in the water, leaves in the air: the usual plant to draw nitrogen out of a pool. Grows over everything if let.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Epipremnum aureum",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "page",
     "source": "Web page on low light plants, greenleavesinterior.com; rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "Web page on low light plants, greenleavesinterior.com; rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 300,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "Web page on low light plants, greenleavesinterior.com; rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.018,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.006,
    "max": 0.035,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "No published rate of a whole plant was found."
   },
   "tissue": {
    "nitrogen": {
     "value": 3.3,
     "unit": "%",
     "min": 2.99,
     "max": 3.55,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Optimum leaf range of another land Araceae (Philodendron bipinnatifidum), a relative."
    },
    "phosphorus": {
     "value": 0.45,
     "unit": "%",
     "min": 0.33,
     "max": 0.58,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Of a relative, as for nitrogen."
    },
    "dryMatter": {
     "value": 10,
     "unit": "%",
     "min": 7,
     "max": 13,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 31,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 31,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Removal by green walls and tissue of a relative are published; no rate of a whole plant was found."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Leaves hold needles of calcium oxalate: chewing them burns mouth and throat of people, cats and dogs; the sap irritates skin.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "invasive",
     "text": "Runs wild in Florida, Hawaii and other warm places. Never put cuttings outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "ficus-pumila": {
   "id": "ficus-pumila",
   "name": "creeping fig",
   "about": "Climber that clings to moist walls and wood and covers a background within a season or two; cut it back.",
   "cautions": [
    "The milky sap of figs irritates skin; wash it off."
   ],
   "scientificName": "Ficus pumila",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 300,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.012,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.004,
    "max": 0.022,
    "basis": "memory",
    "source": "estimated from its kind: 0.004 to 0.022 per day"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.2,
     "unit": "%",
     "min": 1.6,
     "max": 3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.2,
     "unit": "%",
     "min": 0.12,
     "max": 0.4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 25,
     "unit": "%",
     "min": 20,
     "max": 32,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 12,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 55,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "The milky sap irritates skin and mouth.",
     "basis": "page",
     "source": "Mallard Creek veterinary blog on house plants safe for dogs and cats; on Ficus benjamina"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "fittonia-albivenis": {
   "id": "fittonia-albivenis",
   "name": "nerve plant",
   "about": "Low, coloured creeper of moist, drained humus in the shade; wilts fast and rots with wet feet.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Fittonia albivenis",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 50,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.015,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.006,
    "max": 0.028,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2.2,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.7,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 11,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "fontinalis-antipyretica": {
   "id": "fontinalis-antipyretica",
   "name": "willow moss",
   "about": "Large moss of cool streams, tied to stone or wood; fades in warm tanks.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Fontinalis antipyretica",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 6,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 2,
    "max": 15,
    "basis": "assumed",
    "source": "a dense tuft cover of 160 g dry/m² at 0.45 g C/g"
   },
   "light": {
    "least": {
     "value": 5,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    },
    "good": {
     "value": 30,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "general knowledge of the species, recalled"
    }
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "published",
    "source": "Bain & Proctor 1980 (abstract): no moss or liverwort of water among twenty bryophytes used bicarbonate",
    "note": "The family was tested, not surely this species."
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.03,
    "max": 0.3,
    "basis": "assumed",
    "source": "mosses fall apart slowly; taken as tough as water lettuce, no rate for mosses of water looked up"
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 8.2,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 2,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     },
     "high": {
      "value": 22,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the species, recalled"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "All values are recalled or judged; none was read again for this file."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Taking moss from the wild is regulated in many places; buy cultivated moss.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "hydrocotyle-tripartita": {
   "id": "hydrocotyle-tripartita",
   "name": "small pennywort",
   "about": "Fast creeper for ground, wood and water surface.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Hydrocotyle tripartita",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 20,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 90,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 400,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.04,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.01,
    "max": 0.09,
    "basis": "memory",
    "source": "estimated from its kind: 0.01 to 0.09 per day"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.2,
     "unit": "%",
     "min": 2,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.6,
     "unit": "%",
     "min": 0.3,
     "max": 1,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Nitrogen removal of a relative is published; growth and tissue are estimated."
   },
   "risks": [
    {
     "kind": "law",
     "text": "The look-alike Hydrocotyle ranunculoides is on the Union list of invasive species: buy named plants.",
     "basis": "page",
     "source": "EPPO Reporting Service 2022/178 on Regulation (EU) 1143/2014 and its list of invasive alien species of Union concern"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "hygrophila-polysperma": {
   "id": "hygrophila-polysperma",
   "name": "dwarf hygrophila",
   "about": "Undemanding, fast stem plant that takes up nutrients and grows out of the water; cut it back often.",
   "cautions": [
    "Never release plants or cuttings outdoors.",
    "Hygrophila polysperma is a federal noxious weed in the United States."
   ],
   "scientificName": "Hygrophila polysperma",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 70,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 400,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.035,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.01,
    "max": 0.08,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "Submerged plants of temperate waters grow 0.007 to 0.109 a day with rich carbon and nutrients (Nielsen and Sand-Jensen 1991)."
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 1.5,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.2,
     "max": 0.9,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 11,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Critical tissue contents of water plants are published; growth is estimated."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "A federal noxious weed of the USA; never let it or cuttings outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "hypnum-cupressiforme": {
   "id": "hypnum-cupressiforme",
   "name": "plait moss",
   "about": "Sheet moss for wood, stone and mesh that stands short drying; covers mats in months.",
   "scientificName": "Hypnum cupressiforme",
   "group": "moss",
   "fullCoverBiomass": {
    "value": 11,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 25,
    "basis": "assumed",
    "source": "a mat of 300 g dry/m² at 0.45 g C/g: order of forest mosses"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind",
     "note": "Lower bound recalled; median 95% light saturation of 39 mosses is 583 µmol/m²/s (Marschall & Proctor 2004), but desiccation and algae limit useful light in enclosures."
    }
   },
   "growth": {
    "value": 0.017,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.005,
    "max": 0.035,
    "basis": "derived",
    "source": "estimated at 0.004 to 0.018 per day from its kind; raised so that fragments over half a mat cover four fifths of it within four months, as Strazdina et al. 2026 grew it (MethodsX)"
   },
   "tissue": {
    "nitrogen": {
     "value": 1.4,
     "unit": "%",
     "min": 1,
     "max": 1.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.15,
     "unit": "%",
     "min": 0.1,
     "max": 0.22,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6.6,
     "max": 12,
     "basis": "derived",
     "source": "Thielen et al. 2021, Journal of Hydrology and Hydromechanics 69: 421-435; forest mosses, fully wet",
     "note": "1/(1+maximum water storage 7.31-14.10 g/g) for five forest mosses; fully wet state."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Cover of hemp mats after four months is published (over 80 %); light, growth and tissue are estimated."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Taking moss from the wild is regulated in many places; buy cultivated moss.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "lemmaphyllum-microphyllum": {
   "id": "lemmaphyllum-microphyllum",
   "name": "creeping ferns",
   "about": "Small ferns that creep over bark, cork and mossy mesh; moist, then dry for a while, never under water.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Lemmaphyllum microphyllum, Microgramma, Pyrrosia nummulariifolia",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 70,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 200,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.006,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.002,
    "max": 0.012,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 1.7,
     "unit": "%",
     "min": 1.2,
     "max": 2.4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.2,
     "unit": "%",
     "min": 0.1,
     "max": 0.3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 20,
     "unit": "%",
     "min": 15,
     "max": 28,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 65,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "lemna-minor": {
   "id": "lemna-minor",
   "name": "duckweed",
   "about": "Smallest and fastest: covers any still surface and takes nutrients out as you scoop it off; shades what lies below.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Lemna minor",
   "group": "floating",
   "fullCoverBiomass": {
    "value": 3.3,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 1.5,
    "max": 6,
    "basis": "assumed",
    "source": "a closed sheet of 100 g dry/m² at 0.4 g C/g"
   },
   "light": {
    "least": {
     "value": 20,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "Lepeduš et al. 2020, Acta Botanica Croatica, abstract; estimated from its kind, wide uncertainty"
    },
    "good": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "Lepeduš et al. 2020, Acta Botanica Croatica, abstract; estimated from its kind, wide uncertainty"
    },
    "most": {
     "value": 600,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "Lepeduš et al. 2020, Acta Botanica Croatica, abstract; estimated from its kind",
     "note": "Estimates; the source grew the plant at 50 and 500 µmol/m²/s, with less biomass at 50."
    }
   },
   "growth": {
    "value": 0.23,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.08,
    "max": 0.4,
    "basis": "published",
    "source": "Plants 2021, 10(8): 1741, on nitrate and ammonium for Lemna minor and Wolffiella hyalina; general knowledge of the literature, no particular work checked",
    "note": "0.23 per day by dry weight at 75% nitrate, 25% ammonium, half-strength medium; low bound for poor nutrients and the maximum are recalled."
   },
   "breakdown": {
    "value": 0.4,
    "unit": "1",
    "min": 0.2,
    "max": 1,
    "basis": "assumed",
    "source": "between soft shoots and floating ferns, faster than these (Song et al. 2017, abstract)"
   },
   "tissue": {
    "nitrogen": {
     "value": 6.05,
     "unit": "%",
     "min": 2,
     "max": 6.5,
     "basis": "published",
     "source": "Plants 2021, 10(8): 1741, on nitrate and ammonium for Lemna minor and Wolffiella hyalina; general knowledge of the literature, no particular work checked",
     "note": "From crude protein 37.8% / 6.25 in rich medium; low bound (starved, about 2%) recalled."
    },
    "phosphorus": {
     "value": 0.9,
     "unit": "%",
     "min": 0.3,
     "max": 1.5,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryMatter": {
     "value": 6,
     "unit": "%",
     "min": 5,
     "max": 8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 8.5,
      "unit": "pH",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 25,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "memory",
      "source": "Study of temperature and light effects on Lemna minor in eastern Scotland, 1958-59, abstract; authors not shown in the record read; general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "memory",
      "source": "Study of temperature and light effects on Lemna minor in eastern Scotland, 1958-59, abstract; authors not shown in the record read; general knowledge of the literature, no particular work checked"
     }
    }
   },
   "known": {
    "level": "well",
    "note": "Growth, crowding, tissue and the answer to light and temperature are published; hardness is of keepers."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "Overgrows any still surface and comes back from one leaf. Never put it outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "leptochilus-pteropus": {
   "id": "leptochilus-pteropus",
   "name": "Java fern",
   "about": "Fern whose rhizome is tied to wood or stone, never buried; grows under water or with wet feet in humid air, in little light.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Leptochilus pteropus",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 8,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.01,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.004,
    "max": 0.02,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "Submerged plants of temperate waters grow 0.007 to 0.109 a day with rich carbon and nutrients (Nielsen and Sand-Jensen 1991)."
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "breakdown": {
    "value": 0.25,
    "unit": "1",
    "min": 0.1,
    "max": 0.6,
    "basis": "assumed",
    "source": "leathery leaves; between soft shoots and wet-rooted plants"
   },
   "tissue": {
    "nitrogen": {
     "value": 2,
     "unit": "%",
     "min": 1.4,
     "max": 2.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.35,
     "unit": "%",
     "min": 0.2,
     "max": 0.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 13,
     "unit": "%",
     "min": 10,
     "max": 17,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 15,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "leucobryum-glaucum": {
   "id": "leucobryum-glaucum",
   "name": "cushion moss",
   "about": "Cushion of lean, acid ground that wants mist without lime and air between soakings; grows about a centimetre a year, so what you plant is what you have.",
   "cautions": [
    "Leucobryum and peat mosses are protected in parts of Europe: buy cultivated moss."
   ],
   "scientificName": "Leucobryum glaucum",
   "group": "moss",
   "fullCoverBiomass": {
    "value": 11,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 25,
    "basis": "assumed",
    "source": "a mat of 300 g dry/m² at 0.45 g C/g: order of forest mosses"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind",
     "note": "Lower bound recalled; median 95% light saturation of 39 mosses is 583 µmol/m²/s (Marschall & Proctor 2004), but desiccation and algae limit useful light in enclosures."
    }
   },
   "growth": {
    "value": 0.003,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.001,
    "max": 0.006,
    "basis": "memory",
    "source": "about a centimetre a year, recalled: 0.001 to 0.006 per day"
   },
   "tissue": {
    "nitrogen": {
     "value": 0.9,
     "unit": "%",
     "min": 0.6,
     "max": 1.2,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.08,
     "unit": "%",
     "min": 0.05,
     "max": 0.12,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6.6,
     "max": 12,
     "basis": "derived",
     "source": "Thielen et al. 2021, Journal of Hydrology and Hydromechanics 69: 421-435; forest mosses, fully wet",
     "note": "1/(1+maximum water storage 7.31-14.10 g/g) for five forest mosses; fully wet state."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 24,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 60,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Taking moss from the wild is regulated in many places; buy cultivated moss.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "marcgravia-umbellata": {
   "id": "marcgravia-umbellata",
   "name": "shingle vines",
   "about": "Slow climber whose round leaves lie flat on wet cork and wood; wants constant moisture.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Marcgravia umbellata, M. rectiflora, young plants",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 50,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.006,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.002,
    "max": 0.012,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 1.8,
     "unit": "%",
     "min": 1.2,
     "max": 2.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.18,
     "unit": "%",
     "min": 0.1,
     "max": 0.3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 22,
     "unit": "%",
     "min": 18,
     "max": 28,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 80,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "marchantia-polymorpha": {
   "id": "marchantia-polymorpha",
   "name": "common liverwort",
   "about": "Flat liverwort of wet, nutrient-rich ground that spreads by itself and runs over slow mosses.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Marchantia polymorpha",
   "group": "moss",
   "fullCoverBiomass": {
    "value": 11,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 25,
    "basis": "assumed",
    "source": "a mat of 300 g dry/m² at 0.45 g C/g: order of forest mosses"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "Marschall and Proctor 2004, Annals of Botany 94: 593-603; estimated from its kind",
     "note": "Max = 95% saturation of CO2 uptake in M. polymorpha; other bounds estimated."
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "Marschall and Proctor 2004, Annals of Botany 94: 593-603; estimated from its kind",
     "note": "Max = 95% saturation of CO2 uptake in M. polymorpha; other bounds estimated."
    },
    "most": {
     "value": 228,
     "unit": "µmol/m²/s",
     "basis": "published",
     "source": "Marschall and Proctor 2004, Annals of Botany 94: 593-603; estimated from its kind",
     "note": "Max = 95% saturation of CO2 uptake in M. polymorpha; other bounds estimated."
    }
   },
   "growth": {
    "value": 0.05,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.02,
    "max": 0.1,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.7,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 7,
     "unit": "%",
     "min": 5,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 5,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Light saturation is published; growth and tissue are estimated."
   },
   "risks": [
    {
     "kind": "handling",
     "text": "Can overrun slower mosses: pull it early.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "neoregelia-spp": {
   "id": "neoregelia-spp",
   "name": "tank bromeliads",
   "about": "Rosettes that hold water for frogs; mounted in bright light, the tank kept full of soft water, the roots dry.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Neoregelia, small kinds",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 500,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.004,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.001,
    "max": 0.009,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 1,
     "unit": "%",
     "min": 0.6,
     "max": 1.6,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.1,
     "unit": "%",
     "min": 0.05,
     "max": 0.2,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 11,
     "unit": "%",
     "min": 8,
     "max": 15,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 32,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Answer of other bromeliads to nutrients is published; all else is of keepers or estimated."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "nephrolepis-cordifolia": {
   "id": "nephrolepis-cordifolia",
   "name": "button fern",
   "about": "Ferns of loose, moist, drained humus for the back of the bank.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Nephrolepis cordifolia and N. exaltata, dwarf forms",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 20,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.035,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.5,
     "unit": "%",
     "min": 1.8,
     "max": 3.3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.2,
     "max": 0.6,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 17,
     "unit": "%",
     "min": 12,
     "max": 22,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 55,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "N. cordifolia is a listed invasive plant in Florida. Never put plants outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "peperomia-rotundifolia": {
   "id": "peperomia-rotundifolia",
   "name": "peperomias",
   "about": "Fleshy small plants for airy, drained places and bark; moist, then drying, rot when wet.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Peperomia rotundifolia, P. prostrata, P. caperata, P. obtusifolia",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 70,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.01,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.004,
    "max": 0.02,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2,
     "max": 4.2,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 7,
     "unit": "%",
     "min": 5,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 17,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "phyllanthus-fluitans": {
   "id": "phyllanthus-fluitans",
   "name": "red root floater",
   "about": "Floating plant with round leaves, red in bright light; the tops of the leaves must stay dry.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Phyllanthus fluitans",
   "group": "floating",
   "fullCoverBiomass": {
    "value": 4,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 2,
    "max": 8,
    "basis": "assumed",
    "source": "a closed mat of 120 g dry/m² at 0.4 g C/g"
   },
   "light": {
    "least": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 500,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.06,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.02,
    "max": 0.11,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.8,
     "unit": "%",
     "min": 1.8,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.2,
     "max": 0.7,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 29,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Nothing is known of this species; plants of its family often hold alkaloids. Do not let animals eat it by the mouthful.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "invasive",
     "text": "Has escaped in Florida. Never put it outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "pilea-depressa": {
   "id": "pilea-depressa",
   "name": "pileas",
   "about": "Quick, low cover of evenly moist humus.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Pilea depressa, P. glauca, P. cadierei, P. involucrata",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 70,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.04,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.5,
     "unit": "%",
     "min": 2.5,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6,
     "max": 12,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 55,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "pistia-stratiotes": {
   "id": "pistia-stratiotes",
   "name": "water lettuce",
   "about": "Floating rosettes that grow fast in warm, bright, rich water and need 5 to 15 cm of air above.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Pistia stratiotes",
   "group": "floating",
   "fullCoverBiomass": {
    "value": 4,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 2,
    "max": 8,
    "basis": "assumed",
    "source": "a closed mat of 120 g dry/m² at 0.4 g C/g"
   },
   "light": {
    "least": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "good": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "most": {
     "value": 1000,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "growth": {
    "value": 0.06,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.02,
    "max": 0.15,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.1,
    "max": 0.25,
    "basis": "published",
    "source": "0.0082 a day in litter bags of a pond in Florida, 185 days (Zhou et al. 2018, abstract), over the 0.050 that soft shoots have at 25 °C"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 1.5,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorus": {
     "value": 0.6,
     "unit": "%",
     "min": 0.2,
     "max": 1.1,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryMatter": {
     "value": 6,
     "unit": "%",
     "min": 5,
     "max": 8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     },
     "high": {
      "value": 34,
      "unit": "°C",
      "basis": "memory",
      "source": "general knowledge of the literature, no particular work checked"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Removal of nitrogen and decay are published; growth, light and tissue are recalled."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "On the Union list of invasive species since 2022: in the European Union it must not be kept, sold, passed on or released, with a transition period. Do not use it where it is listed.",
     "basis": "page",
     "source": "EPPO Reporting Service 2022/178 on Regulation (EU) 1143/2014 and its list of invasive alien species of Union concern"
    },
    {
     "kind": "toxin",
     "text": "Of the arum family, whose leaves often hold needles of calcium oxalate: take it as irritant when chewed.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    }
   ]
  },
  "pogostemon-stellatus": {
   "id": "pogostemon-stellatus",
   "name": "pogostemon",
   "about": "Stem plants for bright light, soft water and plenty of carbon.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Pogostemon stellatus, P. helferi, P. erectus",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 120,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 400,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.03,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.01,
    "max": 0.07,
    "basis": "memory",
    "source": "estimated from its kind",
    "note": "Submerged plants of temperate waters grow 0.007 to 0.109 a day with rich carbon and nutrients (Nielsen and Sand-Jensen 1991)."
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "assumed",
    "source": "plants of banks and brooks that also live in the air mostly use carbon dioxide alone; this one was not looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.9,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 6,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 20,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "riccardia-chamedryfolia": {
   "id": "riccardia-chamedryfolia",
   "name": "coral pellia",
   "about": "Liverwort like small coral for stone and mesh, under water or where it is always wet; brittle and slow.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Riccardia chamedryfolia, Monosolenium tenerum",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "good": {
     "value": 50,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "growth": {
    "value": 0.012,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.004,
    "max": 0.025,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "published",
    "source": "Bain & Proctor 1980 (abstract): no moss or liverwort of water among twenty bryophytes used bicarbonate",
    "note": "The family was tested, not surely this species."
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.03,
    "max": 0.3,
    "basis": "assumed",
    "source": "mosses fall apart slowly; taken as tough as water lettuce, no rate for mosses of water looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.8,
     "unit": "%",
     "min": 2,
     "max": 3.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.3,
     "max": 0.6,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 8,
     "unit": "%",
     "min": 5,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Light saturation of liverworts is published; all else is of keepers or estimated."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "riccia-fluitans": {
   "id": "riccia-fluitans",
   "name": "crystalwort",
   "about": "Liverwort that floats as a cushion, can be tied down, and lives on wet mud; fast in good light.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Riccia fluitans",
   "group": "floating",
   "fullCoverBiomass": {
    "value": 4,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 2,
    "max": 8,
    "basis": "assumed",
    "source": "a closed mat of 120 g dry/m² at 0.4 g C/g"
   },
   "light": {
    "least": {
     "value": 25,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 90,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 300,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.05,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.02,
    "max": 0.1,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "breakdown": {
    "value": 0.4,
    "unit": "1",
    "min": 0.1,
    "max": 1,
    "basis": "assumed",
    "source": "thin and soft, taken as duckweed"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.5,
     "unit": "%",
     "min": 2.5,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.6,
     "unit": "%",
     "min": 0.3,
     "max": 0.9,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 7,
     "unit": "%",
     "min": 5,
     "max": 9,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 2,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "salvinia-minima": {
   "id": "salvinia-minima",
   "name": "floating ferns",
   "about": "Floating fern with hairy leaves, fast in warm, still, rich water; roots hang into the water and feed on it.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Salvinia minima and the S. auriculata group",
   "group": "floating",
   "fullCoverBiomass": {
    "value": 4,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 2,
    "max": 8,
    "basis": "assumed",
    "source": "a closed mat of 120 g dry/m² at 0.4 g C/g"
   },
   "light": {
    "least": {
     "value": 30,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "good": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "most": {
     "value": 700,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "growth": {
    "value": 0.11,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.069,
    "max": 0.1716,
    "basis": "published",
    "source": "Mitchell and Tur 1975, Journal of Applied Ecology 12; Salvinia molesta; Study of Salvinia molesta at seven sites from the equator to 33° S, abstract; authors not shown in the record read",
    "note": "S. molesta: doubling 4-10 d (0.069-0.173 per day), maximum 0.1716 per day by dry weight; typ is a midpoint; smaller species are slower (no value found)."
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.08,
    "max": 0.4,
    "basis": "assumed",
    "source": "as water lettuce; floating ferns fall apart more slowly than duckweed (Song et al. 2017, abstract)"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.5,
     "unit": "%",
     "min": 0.8,
     "max": 4,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "phosphorus": {
     "value": 0.4,
     "unit": "%",
     "min": 0.1,
     "max": 0.8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "dryMatter": {
     "value": 6,
     "unit": "%",
     "min": 5,
     "max": 8,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "memory",
      "source": "Mitchell and Tur 1975, Journal of Applied Ecology 12; Salvinia molesta; general knowledge of the literature, no particular work checked",
      "note": "S. molesta: best at 30 C, reduced at 25, severely inhibited at 35; low bound estimated."
     },
     "high": {
      "value": 35,
      "unit": "°C",
      "basis": "published",
      "source": "Mitchell and Tur 1975, Journal of Applied Ecology 12; Salvinia molesta; general knowledge of the literature, no particular work checked",
      "note": "S. molesta: best at 30 C, reduced at 25, severely inhibited at 35; low bound estimated."
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Growth and its answer to crowding and shade are published for a close relative; tissue and light are recalled."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "Salvinia molesta, which looks alike, is on the Union list of invasive species and a federal noxious weed of the USA: buy named plants and check the law where you live.",
     "basis": "page",
     "source": "EPPO Reporting Service 2022/178 on Regulation (EU) 1143/2014 and its list of invasive alien species of Union concern"
    }
   ]
  },
  "selaginella-kraussiana": {
   "id": "selaginella-kraussiana",
   "name": "spikemoss",
   "about": "Creeping green of moist humus that never dries; covers ground and hangs over edges.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Selaginella kraussiana, S. uncinata",
   "group": "land",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 50,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.018,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.03,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 2.2,
     "unit": "%",
     "min": 1.5,
     "max": 3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.3,
     "unit": "%",
     "min": 0.2,
     "max": 0.4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 14,
     "unit": "%",
     "min": 10,
     "max": 18,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 15,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "invasive",
     "text": "S. kraussiana is a listed weed in New Zealand and parts of Australia and the Pacific. Never put cuttings outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "spathiphyllum-wallisii": {
   "id": "spathiphyllum-wallisii",
   "name": "peace lily",
   "about": "Stands in wet ground or with bare roots in water and draws nutrients from it; deep shade is enough.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Spathiphyllum wallisii, small hybrids",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "University of Florida IFAS, CFREC-A Research Report RH-90-1; rule of thumb among keepers and shops, no primary source",
     "note": "Extension report classes it as an extreme shade plant; numbers by practice."
    },
    "good": {
     "value": 50,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "University of Florida IFAS, CFREC-A Research Report RH-90-1; rule of thumb among keepers and shops, no primary source",
     "note": "Extension report classes it as an extreme shade plant; numbers by practice."
    },
    "most": {
     "value": 200,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "University of Florida IFAS, CFREC-A Research Report RH-90-1; rule of thumb among keepers and shops, no primary source",
     "note": "Extension report classes it as an extreme shade plant; numbers by practice."
    }
   },
   "growth": {
    "value": 0.015,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.006,
    "max": 0.03,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.3,
     "unit": "%",
     "min": 2.99,
     "max": 3.55,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Optimum leaf range of another land Araceae (Philodendron bipinnatifidum), a relative."
    },
    "phosphorus": {
     "value": 0.45,
     "unit": "%",
     "min": 0.33,
     "max": 0.58,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Of a relative, as for nitrogen."
    },
    "dryMatter": {
     "value": 13,
     "unit": "%",
     "min": 10,
     "max": 17,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.2,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Nitrogen for best growth and plant mass are published; growth is estimated and tissue taken from a relative."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Leaves hold needles of calcium oxalate: chewing them burns mouth and throat of people, cats and dogs; the sap irritates skin.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "sphagnum-palustre": {
   "id": "sphagnum-palustre",
   "name": "peat moss",
   "about": "Bog moss that lives on rain: the water about 2 cm below its heads, no lime, good light. It makes its water sour.",
   "cautions": [
    "Peat moss may carry Sporothrix: wear gloves when your skin is broken."
   ],
   "scientificName": "Sphagnum palustre",
   "group": "moss",
   "fullCoverBiomass": {
    "value": 11,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 25,
    "basis": "assumed",
    "source": "a mat of 300 g dry/m² at 0.45 g C/g: order of forest mosses"
   },
   "light": {
    "least": {
     "value": 30,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "good": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "most": {
     "value": 400,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "growth": {
    "value": 0.006,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.002,
    "max": 0.012,
    "basis": "memory",
    "source": "estimated from its kind: 0.002 to 0.012 per day"
   },
   "tissue": {
    "nitrogen": {
     "value": 0.9,
     "unit": "%",
     "min": 0.6,
     "max": 1.2,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.05,
     "unit": "%",
     "min": 0.02,
     "max": 0.1,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 6,
     "unit": "%",
     "min": 3,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 27,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Yield in culture, best water table and cation exchange are published; light and tissue are estimated."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Bog mosses are protected in much of Europe; buy cultivated moss.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "zoonosis",
     "text": "Spores of the fungus Sporothrix live on sphagnum: wear gloves, keep it off cuts.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "syngonium-podophyllum": {
   "id": "syngonium-podophyllum",
   "name": "arrowhead vine",
   "about": "Climber with roots in water or soil, fast, clings to walls.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Syngonium podophyllum",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 60,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.035,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.3,
     "unit": "%",
     "min": 2.99,
     "max": 3.55,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Optimum leaf range of another land Araceae (Philodendron bipinnatifidum), a relative."
    },
    "phosphorus": {
     "value": 0.45,
     "unit": "%",
     "min": 0.33,
     "max": 0.58,
     "basis": "published",
     "source": "Nutrition of lacy tree philodendron, part II, Acta Scientiarum Polonorum Hortorum Cultus 10(3), 2011; leaves of another land plant of its family",
     "note": "Of a relative, as for nitrogen."
    },
    "dryMatter": {
     "value": 10,
     "unit": "%",
     "min": 7,
     "max": 13,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 16,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 50,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers, growth is estimated, tissue taken from a relative."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "Leaves hold needles of calcium oxalate: chewing them burns mouth and throat of people, cats and dogs; the sap irritates skin.",
     "basis": "page",
     "source": "Page on insoluble oxalates of the Pet Poison Helpline"
    },
    {
     "kind": "invasive",
     "text": "Runs wild in Florida, South Africa and on Pacific islands. Never put cuttings outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "taxiphyllum-barbieri": {
   "id": "taxiphyllum-barbieri",
   "name": "Java moss",
   "about": "Moss for wood and stone under water and in the splash zone; ties on, needs little light, catches detritus.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Taxiphyllum barbieri",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 8,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 40,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.02,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.008,
    "max": 0.04,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "published",
    "source": "Bain & Proctor 1980 (abstract): no moss or liverwort of water among twenty bryophytes used bicarbonate",
    "note": "The family was tested, not surely this species."
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.03,
    "max": 0.3,
    "basis": "assumed",
    "source": "mosses fall apart slowly; taken as tough as water lettuce, no rate for mosses of water looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6,
     "max": 12,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 18,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Taxiphyllum barbieri, a mirror of Wikipedia; rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 30,
      "unit": "°C",
      "basis": "page",
      "source": "Encyclopaedia article on Taxiphyllum barbieri, a mirror of Wikipedia; rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "thuidium-tamariscinum": {
   "id": "thuidium-tamariscinum",
   "name": "tamarisk moss",
   "about": "Feathery moss of constantly moist humus, bark and walls; one of seven that lived half a year on indoor walls at 14 to 20 °C.",
   "scientificName": "Thuidium tamariscinum",
   "group": "moss",
   "fullCoverBiomass": {
    "value": 11,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 25,
    "basis": "assumed",
    "source": "a mat of 300 g dry/m² at 0.45 g C/g: order of forest mosses"
   },
   "light": {
    "least": {
     "value": 15,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind, wide uncertainty"
    },
    "most": {
     "value": 250,
     "unit": "µmol/m²/s",
     "basis": "memory",
     "source": "estimated from its kind",
     "note": "Lower bound recalled; median 95% light saturation of 39 mosses is 583 µmol/m²/s (Marschall & Proctor 2004), but desiccation and algae limit useful light in enclosures."
    }
   },
   "growth": {
    "value": 0.008,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.003,
    "max": 0.015,
    "basis": "memory",
    "source": "estimated from its kind: 0.003 to 0.015 per day"
   },
   "tissue": {
    "nitrogen": {
     "value": 1.4,
     "unit": "%",
     "min": 1,
     "max": 1.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.15,
     "unit": "%",
     "min": 0.1,
     "max": 0.22,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6.6,
     "max": 12,
     "basis": "derived",
     "source": "Thielen et al. 2021, Journal of Hydrology and Hydromechanics 69: 421-435; forest mosses, fully wet",
     "note": "1/(1+maximum water storage 7.31-14.10 g/g) for five forest mosses; fully wet state."
    }
   },
   "tolerances": {
    "airTemperature": {
     "low": {
      "value": 8,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 26,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 75,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "fairly",
    "note": "Half a year on indoor walls and loss of area at 5 °C are published; light, growth and tissue are estimated."
   },
   "risks": [
    {
     "kind": "law",
     "text": "Taking moss from the wild is regulated in many places; buy cultivated moss.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  },
  "tradescantia-fluminensis": {
   "id": "tradescantia-fluminensis",
   "name": "wandering dude",
   "about": "Fast creeper for any moist ground, roots in water too; breaks and grows from every piece.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Tradescantia fluminensis, T. zebrina",
   "group": "emersed",
   "fullCoverBiomass": {
    "value": 12,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 4,
    "max": 40,
    "basis": "assumed",
    "source": "350 g dry/m² at 0.42 g C/g"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 80,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 350,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.03,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.012,
    "max": 0.06,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "tissue": {
    "nitrogen": {
     "value": 3.3,
     "unit": "%",
     "min": 2,
     "max": 4.5,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 7,
     "unit": "%",
     "min": 5,
     "max": 9,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "Substrate or water."
     },
     "high": {
      "value": 7.8,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source",
      "note": "Substrate or water."
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 20,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "airTemperature": {
     "low": {
      "value": 10,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "relativeHumidity": {
     "low": {
      "value": 40,
      "unit": "%",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "toxin",
     "text": "The sap gives dogs and some people a rash.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    {
     "kind": "invasive",
     "text": "T. fluminensis is invasive in New Zealand, Australia, the south-eastern USA and southern Europe. Never put pieces outdoors.",
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   ]
  },
  "vesicularia-dubyana": {
   "id": "vesicularia-dubyana",
   "name": "Christmas moss and its relatives",
   "about": "Moss tied to wood and stone, under water or permanently wet; a little slower and choosier than Java moss.",
   "cautions": [
    "Never release plants or cuttings outdoors."
   ],
   "scientificName": "Vesicularia dubyana, V. montagnei, V. ferriei",
   "group": "submerged",
   "fullCoverBiomass": {
    "value": 8,
    "unit": "mol/m²",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "a closed stand of 250 g dry/m² at 0.38 g C/g: order of dense macrophyte beds"
   },
   "light": {
    "least": {
     "value": 10,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "good": {
     "value": 45,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "most": {
     "value": 150,
     "unit": "µmol/m²/s",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "growth": {
    "value": 0.015,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.5,
    "min": 0.005,
    "max": 0.03,
    "basis": "memory",
    "source": "estimated from its kind"
   },
   "bicarbonate": {
    "value": 0,
    "unit": "1",
    "basis": "published",
    "source": "Bain & Proctor 1980 (abstract): no moss or liverwort of water among twenty bryophytes used bicarbonate",
    "note": "The family was tested, not surely this species."
   },
   "breakdown": {
    "value": 0.16,
    "unit": "1",
    "min": 0.03,
    "max": 0.3,
    "basis": "assumed",
    "source": "mosses fall apart slowly; taken as tough as water lettuce, no rate for mosses of water looked up"
   },
   "tissue": {
    "nitrogen": {
     "value": 3,
     "unit": "%",
     "min": 2,
     "max": 4,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "phosphorus": {
     "value": 0.5,
     "unit": "%",
     "min": 0.3,
     "max": 0.8,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "dryMatter": {
     "value": 9,
     "unit": "%",
     "min": 6,
     "max": 12,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "tolerances": {
    "pH": {
     "low": {
      "value": 5.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 7.5,
      "unit": "pH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "GH": {
     "low": {
      "value": 1,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 12,
      "unit": "°dGH",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    },
    "waterTemperature": {
     "low": {
      "value": 18,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     },
     "high": {
      "value": 28,
      "unit": "°C",
      "basis": "common practice",
      "source": "rule of thumb among keepers and shops, no primary source"
     }
    }
   },
   "known": {
    "level": "poorly",
    "note": "Ranges are those of keepers; growth and tissue are estimated from its kind."
   },
   "risks": [
    {
     "kind": "escape",
     "text": "Never put cuttings, spores or tank water outdoors.",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   ]
  }
 },
 "feeds": {
  "algae-wafer": {
   "id": "algae-wafer",
   "name": "algae wafer",
   "about": "Sinking discs for grazers.",
   "dryMatter": {
    "value": 90,
    "unit": "%",
    "min": 88,
    "max": 94,
    "basis": "page",
    "source": "Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate",
    "note": "feed typically 10% moisture, 10% ash, 80% organic"
   },
   "carbon": {
    "value": 45,
    "unit": "%",
    "min": 40,
    "max": 50,
    "basis": "page",
    "source": "Boyd CE, 'Feeding affects pond water quality', Global Seafood Alliance; Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate"
   },
   "nitrogen": {
    "value": 5.44,
    "unit": "%",
    "min": 4.48,
    "max": 6.72,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1,
    "unit": "%",
    "min": 0.7,
    "max": 1.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.16,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.08,
    "max": 0.3,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 2,
    "unit": "%",
    "min": 1,
    "max": 3.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 16,
    "unit": "kJ/g",
    "min": 14,
    "max": 18,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 8,
     "unit": "%",
     "min": 3,
     "max": 15,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 22,
     "unit": "%",
     "min": 12,
     "max": 35,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "mini wafer, as fed": {
     "value": 0.2,
     "unit": "g",
     "min": 0.15,
     "max": 0.3,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "standard wafer 15-20 mm, as fed": {
     "value": 0.8,
     "unit": "g",
     "min": 0.5,
     "max": 1.3,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "quarter of a standard wafer, as fed": {
     "value": 0.2,
     "unit": "g",
     "min": 0.12,
     "max": 0.33,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "poorly",
    "note": "Make-up, leaching and decay are recalled or estimated."
   }
  },
  "bee-pollen": {
   "id": "bee-pollen",
   "name": "bee-collected pollen",
   "about": "Powdery food for springtails, shrimp and fry.",
   "dryMatter": {
    "value": 92,
    "unit": "%",
    "min": 80,
    "max": 95,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "dried trade pollen; fresh 0.70-0.80"
   },
   "carbon": {
    "value": 46,
    "unit": "%",
    "min": 43,
    "max": 50,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 3.2,
    "unit": "%",
    "min": 2.08,
    "max": 4.48,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 0.5,
    "unit": "%",
    "min": 0.3,
    "max": 0.7,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.25,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.1,
    "max": 0.5,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.15,
    "unit": "%",
    "min": 0.1,
    "max": 0.3,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 18,
    "unit": "kJ/g",
    "min": 16,
    "max": 19.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 30,
     "unit": "%",
     "min": 15,
     "max": 45,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 40,
     "unit": "%",
     "min": 30,
     "max": 55,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "one pollen load, dry": {
     "value": 0.008,
     "unit": "g",
     "min": 0.006,
     "max": 0.01,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "small pinch, dry": {
     "value": 0.04,
     "unit": "g",
     "min": 0.02,
     "max": 0.08,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "bloodworm": {
   "id": "bloodworm",
   "name": "bloodworm, frozen",
   "about": "Frozen or live midge larvae; thaw and rinse, for the thaw water fouls.",
   "cautions": [
    "Midge larvae and dried insects can cause allergy in people who handle them."
   ],
   "dryMatter": {
    "value": 13.6,
    "unit": "%",
    "min": 6.4,
    "max": 29,
    "basis": "published",
    "source": "Bogut et al. (2007) composition of Chironomus plumosus larvae, as quoted at stopfake.ucoz.com; 'Bloodworms: nature's fish food', aquaponicsmagazine.com",
    "note": "7.6% protein fresh / 55.7% dry = 13.6% dry matter; moisture 71-93.6% on the page"
   },
   "carbon": {
    "value": 46,
    "unit": "%",
    "min": 42,
    "max": 50,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 8.91,
    "unit": "%",
    "min": 7.63,
    "max": 10,
    "basis": "page",
    "source": "Bogut et al. (2007) composition of Chironomus plumosus larvae, as quoted at stopfake.ucoz.com; 'Bloodworms: nature's fish food', aquaponicsmagazine.com",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1,
    "unit": "%",
    "min": 0.7,
    "max": 1.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.4,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.2,
    "max": 0.7,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.5,
    "unit": "%",
    "min": 0.2,
    "max": 1,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 20,
    "unit": "kJ/g",
    "min": 18,
    "max": 22,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 30,
     "unit": "%",
     "min": 15,
     "max": 45,
     "basis": "memory",
     "source": "estimated from its kind",
     "note": "Thaw liquid; rinse drops it."
    },
    "day": {
     "value": 40,
     "unit": "%",
     "min": 25,
     "max": 55,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "one large larva, wet": {
     "value": 0.008,
     "unit": "g",
     "min": 0.004,
     "max": 0.012,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "blister cube, wet, with ice": {
     "value": 3.3,
     "unit": "g",
     "min": 2.5,
     "max": 4.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "eighth of a cube, wet": {
     "value": 0.4,
     "unit": "g",
     "min": 0.3,
     "max": 0.55,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "brine-shrimp": {
   "id": "brine-shrimp",
   "name": "brine shrimp, frozen",
   "about": "Frozen adults or fresh nauplii, the first food of fry, shrimp and hydra alike.",
   "dryMatter": {
    "value": 10,
    "unit": "%",
    "min": 7,
    "max": 14,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "carbon": {
    "value": 46,
    "unit": "%",
    "min": 42,
    "max": 50,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 9.28,
    "unit": "%",
    "min": 8,
    "max": 10.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1.2,
    "unit": "%",
    "min": 0.8,
    "max": 1.8,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.45,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.25,
    "max": 0.8,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.2,
    "unit": "%",
    "min": 0.1,
    "max": 0.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 20,
    "unit": "kJ/g",
    "min": 17,
    "max": 22,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 25,
     "unit": "%",
     "min": 10,
     "max": 40,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 35,
     "unit": "%",
     "min": 20,
     "max": 50,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "one frozen adult, wet": {
     "value": 0.006,
     "unit": "g",
     "min": 0.003,
     "max": 0.01,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "one nauplius, wet": {
     "value": 0.000012,
     "unit": "g",
     "min": 0.000008,
     "max": 0.000018,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "quarter blister cube, wet, with ice": {
     "value": 0.9,
     "unit": "g",
     "min": 0.7,
     "max": 1.1,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "poorly",
    "note": "Make-up, leaching and decay are recalled or estimated."
   }
  },
  "cucumber": {
   "id": "cucumber",
   "name": "cucumber slice, blanched",
   "about": "Blanched slice for snails and shrimp; take the rest out after a day.",
   "dryMatter": {
    "value": 4.8,
    "unit": "%",
    "min": 4,
    "max": 5.5,
    "basis": "memory",
    "source": "USDA FoodData Central SR Legacy values recalled"
   },
   "carbon": {
    "value": 41,
    "unit": "%",
    "min": 37,
    "max": 45,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 2.24,
    "unit": "%",
    "min": 1.6,
    "max": 2.88,
    "basis": "page",
    "source": "USDA FoodData Central, SR Legacy (168409 cucumber with peel raw; 169291 zucchini raw), energy and protein as reproduced in public data files",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 0.5,
    "unit": "%",
    "min": 0.4,
    "max": 0.6,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "24 mg per 100 g fresh"
   },
   "decay": {
    "value": 0.35,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.2,
    "max": 0.6,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.34,
    "unit": "%",
    "min": 0.2,
    "max": 0.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "16 mg per 100 g fresh."
   },
   "energy": {
    "value": 13.1,
    "unit": "kJ/g",
    "min": 12,
    "max": 15,
    "basis": "page",
    "source": "USDA FoodData Central, SR Legacy, as reproduced in public data files",
    "note": "15 kcal per 100 g fresh / 4.8% dry matter."
   },
   "leached": {
    "hour": {
     "value": 12,
     "unit": "%",
     "min": 5,
     "max": 20,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 35,
     "unit": "%",
     "min": 20,
     "max": 50,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "slice 5 mm × 40 mm, fresh": {
     "value": 6.5,
     "unit": "g",
     "min": 5,
     "max": 8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "thin slice 2 mm × 30 mm, fresh": {
     "value": 1.5,
     "unit": "g",
     "min": 1,
     "max": 2,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "dried-insects": {
   "id": "dried-insects",
   "name": "dried insects",
   "about": "Protein for crabs, woodlice and lizards; little calcium, so dust it.",
   "cautions": [
    "Midge larvae and dried insects can cause allergy in people who handle them."
   ],
   "dryMatter": {
    "value": 95,
    "unit": "%",
    "min": 93,
    "max": 97,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "carbon": {
    "value": 52,
    "unit": "%",
    "min": 48,
    "max": 57,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 8.32,
    "unit": "%",
    "min": 6.72,
    "max": 10.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 0.9,
    "unit": "%",
    "min": 0.6,
    "max": 1.2,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.08,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.03,
    "max": 0.15,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.11,
    "unit": "%",
    "min": 0.05,
    "max": 0.15,
    "basis": "published",
    "source": "Barker, Fitzpatrick and Dierenfeld 1998, Zoo Biology 17: 123-134, abstract",
    "note": "Mean calcium of whole insects 0.11%, dry basis; soldier fly larvae are far higher at 2-5% (recalled)."
   },
   "energy": {
    "value": 23.5,
    "unit": "kJ/g",
    "min": 21,
    "max": 27,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 5,
     "unit": "%",
     "min": 2,
     "max": 10,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 12,
     "unit": "%",
     "min": 5,
     "max": 20,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "dried mealworm, air dry": {
     "value": 0.035,
     "unit": "g",
     "min": 0.02,
     "max": 0.06,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pinch of crushed insects, air dry": {
     "value": 0.1,
     "unit": "g",
     "min": 0.05,
     "max": 0.2,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "flake": {
   "id": "flake",
   "name": "flake food",
   "about": "Thin flakes that float, then sink; lose a third of their matter in a day.",
   "dryMatter": {
    "value": 90,
    "unit": "%",
    "min": 88,
    "max": 94,
    "basis": "page",
    "source": "Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate",
    "note": "feed typically 10% moisture, 10% ash, 80% organic"
   },
   "carbon": {
    "value": 45,
    "unit": "%",
    "min": 40,
    "max": 50,
    "basis": "page",
    "source": "Boyd CE, 'Feeding affects pond water quality', Global Seafood Alliance; Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate"
   },
   "nitrogen": {
    "value": 7.36,
    "unit": "%",
    "min": 6.4,
    "max": 8.32,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1.2,
    "unit": "%",
    "min": 0.9,
    "max": 1.6,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.25,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.12,
    "max": 0.45,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 2,
    "unit": "%",
    "min": 1,
    "max": 3.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 19,
    "unit": "kJ/g",
    "min": 17,
    "max": 21,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 18,
     "unit": "%",
     "min": 8,
     "max": 30,
     "basis": "memory",
     "source": "estimated from its kind",
     "note": "Thin and porous; most of any leaching is at once."
    },
    "day": {
     "value": 30,
     "unit": "%",
     "min": 20,
     "max": 45,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "pinch, two fingers, as fed": {
     "value": 0.05,
     "unit": "g",
     "min": 0.02,
     "max": 0.1,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "large flake, 1 cm², as fed": {
     "value": 0.004,
     "unit": "g",
     "min": 0.002,
     "max": 0.008,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "fruit-flies": {
   "id": "fruit-flies",
   "name": "fruit flies",
   "about": "Live food for frogs, geckos and surface fish; dust with calcium.",
   "dryMatter": {
    "value": 30.9,
    "unit": "%",
    "min": 28,
    "max": 34,
    "basis": "published",
    "source": "moisture 69.1 % (husbandry handbook, as read)"
   },
   "carbon": {
    "value": 50,
    "unit": "%",
    "min": 46,
    "max": 54,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 10.88,
    "unit": "%",
    "min": 10.56,
    "max": 11.2,
    "basis": "published",
    "source": "21.0 % protein of fresh over 0.309 (husbandry handbook, as read)"
   },
   "phosphorus": {
    "value": 1.1,
    "unit": "%",
    "min": 0.9,
    "max": 1.3,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.3,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.15,
    "max": 0.5,
    "basis": "memory",
    "source": "an estimate by kind"
   },
   "calcium": {
    "value": 0.11,
    "unit": "%",
    "min": 0.06,
    "max": 0.15,
    "basis": "published",
    "source": "Barker, Fitzpatrick and Dierenfeld 1998, Zoo Biology 17: 123-134, abstract",
    "note": "Whole-insect mean."
   },
   "energy": {
    "value": 18.5,
    "unit": "kJ/g",
    "min": 18.5,
    "max": 18.5,
    "basis": "published",
    "source": "Hand-Rearing Birds, second edition, table 41.1",
    "note": "1.37 kcal/g fresh x 4.184 / 0.309."
   },
   "leached": {
    "hour": {
     "value": 1,
     "unit": "%",
     "min": 0,
     "max": 3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 6,
     "unit": "%",
     "min": 2,
     "max": 12,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "one D. melanogaster, live": {
     "value": 0.001,
     "unit": "g",
     "min": 0.0008,
     "max": 0.0013,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "one D. hydei, live": {
     "value": 0.0025,
     "unit": "g",
     "min": 0.002,
     "max": 0.003,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "20 D. melanogaster, live": {
     "value": 0.02,
     "unit": "g",
     "min": 0.016,
     "max": 0.026,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "shrimp-pellet": {
   "id": "shrimp-pellet",
   "name": "sinking shrimp pellet",
   "about": "Sinking pellets for shrimp, snails and bottom fish.",
   "dryMatter": {
    "value": 90,
    "unit": "%",
    "min": 88,
    "max": 94,
    "basis": "page",
    "source": "Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate",
    "note": "feed typically 10% moisture, 10% ash, 80% organic"
   },
   "carbon": {
    "value": 45,
    "unit": "%",
    "min": 40,
    "max": 50,
    "basis": "page",
    "source": "Boyd CE, 'Feeding affects pond water quality', Global Seafood Alliance; Boyd CE, Chatvijitkul S, Davis DA, 'Understanding the oxygen demand of aquafeeds', Responsible Seafood Advocate"
   },
   "nitrogen": {
    "value": 5.76,
    "unit": "%",
    "min": 4.8,
    "max": 7.2,
    "basis": "memory",
    "source": "Boyd CE, 'Feeding affects pond water quality', Global Seafood Alliance; general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1.2,
    "unit": "%",
    "min": 0.9,
    "max": 1.5,
    "basis": "page",
    "source": "Boyd CE, 'Feeding affects pond water quality', Global Seafood Alliance",
    "note": "1.2% in the worked pelleted feed"
   },
   "decay": {
    "value": 0.2,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.1,
    "max": 0.35,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 2,
    "unit": "%",
    "min": 1,
    "max": 4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 17,
    "unit": "kJ/g",
    "min": 15,
    "max": 19,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 10,
     "unit": "%",
     "min": 5,
     "max": 17,
     "basis": "published",
     "source": "NARO Uganda record 1131: stability in water of two feeds, 5 to 30 min",
     "note": "Highest dry-matter retention over 5-30 min was 90.05% sinking and 83.08% floating, so at least 10-17% lost."
    },
    "day": {
     "value": 25,
     "unit": "%",
     "min": 15,
     "max": 40,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "pellet 2 mm, as fed": {
     "value": 0.012,
     "unit": "g",
     "min": 0.008,
     "max": 0.018,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "stick or disc 3-4 mm, as fed": {
     "value": 0.06,
     "unit": "g",
     "min": 0.03,
     "max": 0.12,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  },
  "spinach": {
   "id": "spinach",
   "name": "spinach or nettle leaf, blanched",
   "about": "Blanched leaf; its calcium is bound and hardly taken up.",
   "dryMatter": {
    "value": 8.6,
    "unit": "%",
    "min": 8,
    "max": 10,
    "basis": "memory",
    "source": "USDA FoodData Central SR Legacy values recalled"
   },
   "carbon": {
    "value": 40,
    "unit": "%",
    "min": 36,
    "max": 44,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 5.28,
    "unit": "%",
    "min": 4.48,
    "max": 6.08,
    "basis": "memory",
    "source": "USDA FoodData Central SR Legacy values recalled",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 0.57,
    "unit": "%",
    "min": 0.5,
    "max": 0.7,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "49 mg per 100 g fresh"
   },
   "decay": {
    "value": 0.4,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.2,
    "max": 0.7,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 1.15,
    "unit": "%",
    "min": 0.9,
    "max": 1.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "99 mg per 100 g fresh; much bound as oxalate."
   },
   "energy": {
    "value": 11.3,
    "unit": "kJ/g",
    "min": 10.5,
    "max": 13,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "23 kcal per 100 g fresh."
   },
   "leached": {
    "hour": {
     "value": 10,
     "unit": "%",
     "min": 5,
     "max": 20,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 30,
     "unit": "%",
     "min": 15,
     "max": 45,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "leaf, fresh": {
     "value": 4,
     "unit": "g",
     "min": 2,
     "max": 8,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "2 × 2 cm piece, fresh": {
     "value": 0.15,
     "unit": "g",
     "min": 0.1,
     "max": 0.25,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "poorly",
    "note": "Make-up, leaching and decay are recalled or estimated."
   }
  },
  "springtails": {
   "id": "springtails",
   "name": "springtails as feed",
   "about": "Live food for the smallest mouths; leftovers live on in the litter.",
   "dryMatter": {
    "value": 30,
    "unit": "%",
    "min": 25,
    "max": 35,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "carbon": {
    "value": 48,
    "unit": "%",
    "min": 44,
    "max": 52,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 8.8,
    "unit": "%",
    "min": 7.2,
    "max": 10.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "phosphorus": {
    "value": 0.9,
    "unit": "%",
    "min": 0.6,
    "max": 1.2,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.3,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.15,
    "max": 0.5,
    "basis": "memory",
    "source": "an estimate by kind"
   },
   "calcium": {
    "value": 0.2,
    "unit": "%",
    "min": 0.1,
    "max": 0.4,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 21,
    "unit": "kJ/g",
    "min": 19,
    "max": 23,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 1,
     "unit": "%",
     "min": 0,
     "max": 3,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 6,
     "unit": "%",
     "min": 2,
     "max": 12,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "one adult F. candida 2 mm, live": {
     "value": 0.00015,
     "unit": "g",
     "min": 0.00005,
     "max": 0.0003,
     "basis": "memory",
     "source": "general knowledge of the literature, no particular work checked"
    },
    "teaspoon tap from culture, about 200, live": {
     "value": 0.03,
     "unit": "g",
     "min": 0.01,
     "max": 0.06,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "poorly",
    "note": "Make-up, leaching and decay are recalled or estimated."
   }
  },
  "yeast": {
   "id": "yeast",
   "name": "baker's yeast",
   "about": "Fine powder for springtail cultures, water fleas and infusoria; clouds water at once.",
   "dryMatter": {
    "value": 94,
    "unit": "%",
    "min": 92,
    "max": 96,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "instant dry; fresh block 0.28-0.32"
   },
   "carbon": {
    "value": 47,
    "unit": "%",
    "min": 44,
    "max": 50,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 7.2,
    "unit": "%",
    "min": 6.08,
    "max": 8.32,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "crude protein / 6.25"
   },
   "phosphorus": {
    "value": 1.2,
    "unit": "%",
    "min": 0.9,
    "max": 1.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.6,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.3,
    "max": 1.2,
    "basis": "memory",
    "source": "an estimate by kind; soaked feed residue took up 8.8 mg O2/g/h at 20 °C (Aquaculture Science 37: 27, 1989, abstract)"
   },
   "calcium": {
    "value": 0.1,
    "unit": "%",
    "min": 0.05,
    "max": 0.2,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "energy": {
    "value": 19,
    "unit": "kJ/g",
    "min": 17,
    "max": 20.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "leached": {
    "hour": {
     "value": 25,
     "unit": "%",
     "min": 10,
     "max": 50,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 50,
     "unit": "%",
     "min": 30,
     "max": 70,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "few grains for a culture, dry": {
     "value": 0.006,
     "unit": "g",
     "min": 0.003,
     "max": 0.015,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "pinch, dry": {
     "value": 0.06,
     "unit": "g",
     "min": 0.03,
     "max": 0.12,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "poorly",
    "note": "Make-up, leaching and decay are recalled or estimated."
   }
  },
  "zucchini": {
   "id": "zucchini",
   "name": "zucchini slice, blanched",
   "about": "Blanched slice for snails, shrimp and woodlice; take the rest out after a day.",
   "dryMatter": {
    "value": 5.2,
    "unit": "%",
    "min": 4.5,
    "max": 6,
    "basis": "memory",
    "source": "USDA FoodData Central SR Legacy values recalled"
   },
   "carbon": {
    "value": 41,
    "unit": "%",
    "min": 37,
    "max": 45,
    "basis": "memory",
    "source": "general literature, from protein, fat and ash"
   },
   "nitrogen": {
    "value": 3.68,
    "unit": "%",
    "min": 2.88,
    "max": 4.32,
    "basis": "page",
    "source": "USDA FoodData Central, SR Legacy 169291, 1.21 g protein per 100 g fresh, as reproduced in public data files"
   },
   "phosphorus": {
    "value": 0.73,
    "unit": "%",
    "min": 0.6,
    "max": 0.9,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked"
   },
   "decay": {
    "value": 0.35,
    "unit": "1/d",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 0.2,
    "max": 0.6,
    "basis": "memory",
    "source": "an estimate by kind"
   },
   "calcium": {
    "value": 0.3,
    "unit": "%",
    "min": 0.2,
    "max": 0.5,
    "basis": "memory",
    "source": "general knowledge of the literature, no particular work checked",
    "note": "16 mg per 100 g fresh."
   },
   "energy": {
    "value": 13.7,
    "unit": "kJ/g",
    "min": 12.5,
    "max": 15,
    "basis": "page",
    "source": "USDA FoodData Central, SR Legacy, as reproduced in public data files",
    "note": "17 kcal per 100 g fresh / 5.2% dry matter."
   },
   "leached": {
    "hour": {
     "value": 12,
     "unit": "%",
     "min": 5,
     "max": 20,
     "basis": "memory",
     "source": "estimated from its kind"
    },
    "day": {
     "value": 35,
     "unit": "%",
     "min": 20,
     "max": 50,
     "basis": "memory",
     "source": "estimated from its kind"
    }
   },
   "portions": {
    "slice 5 mm × 45 mm, fresh": {
     "value": 8,
     "unit": "g",
     "min": 6,
     "max": 10,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "quarter slice, fresh": {
     "value": 2,
     "unit": "g",
     "min": 1.5,
     "max": 2.5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   },
   "known": {
    "level": "fairly",
    "note": "Part of its make-up is in print; how fast it leaches and decays is estimated."
   }
  }
 },
 "materials": {
  "acetoxy-silicone": {
   "id": "acetoxy-silicone",
   "name": "silicone, acetoxy-cure",
   "about": "The usual sealant for glass; smells of vinegar while it cures.",
   "cautions": [
    "Air the room while it cures; no animals near. Use only kinds sold without fungicide."
   ],
   "known": {
    "level": "well",
    "note": "Mostly from data sheets and standards as quoted; the product you buy may differ."
   },
   "use": "build",
   "made": "sealant",
   "properties": {
    "density over that of water": {
     "value": 1.03,
     "unit": "1",
     "basis": "page",
     "source": "Ambersil 5024A data"
    },
    "curing depth": {
     "value": 3,
     "unit": "mm per 24 h",
     "basis": "page",
     "source": "Ambersil 5024A data"
    },
    "skin forms after": {
     "value": 14,
     "unit": "min",
     "min": 8,
     "max": 20,
     "basis": "page",
     "source": "Ambersil 5024A data"
    },
    "least joint": {
     "value": 3,
     "unit": "mm",
     "basis": "page",
     "source": "Ambersil 5024A data: joint depth or width not below 3 mm; half the width above 6 mm"
    },
    "movement taken up": {
     "value": 25,
     "unit": "% +/-",
     "basis": "page",
     "source": "Sikasil-GP product data sheet"
    },
    "cartridge": {
     "value": 302.5,
     "unit": "mL",
     "min": 295,
     "max": 310,
     "basis": "page",
     "source": "Sikasil-GP (295 mL); Ambersil 5024A (310 mL)"
    },
    "cures before water is let in": {
     "value": 4.5,
     "unit": "d",
     "min": 2,
     "max": 7,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   }
  },
  "acrylic-sheet": {
   "id": "acrylic-sheet",
   "name": "acrylic sheet",
   "about": "Light, clear plastic that bends, scratches and creeps under load.",
   "known": {
    "level": "poorly",
    "note": "Recalled or of the trade; the product you buy may differ."
   },
   "use": "build",
   "made": "plastic",
   "properties": {
    "density": {
     "value": 1190,
     "unit": "kg/m³",
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "stiffness": {
     "value": 3.2,
     "unit": "GPa",
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "heat conduction": {
     "value": 0.19,
     "unit": "W/(m K)",
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "long-term design stress": {
     "value": 6,
     "unit": "MPa",
     "min": 5,
     "max": 7,
     "basis": "memory",
     "source": "long-term creep-limited values"
    }
   }
  },
  "alder-litter": {
   "id": "alder-litter",
   "name": "alder leaves, air-dried",
   "about": "Leaves that break down fast and feed shredders; tan the water.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 550,
    "unit": "kg/m³",
    "min": 400,
    "max": 800,
    "basis": "assumed",
    "source": "soaked leaf: dry mass over displaced volume"
   },
   "use": "litter",
   "carbon": {
    "value": 49,
    "unit": "%",
    "min": 46,
    "max": 52,
    "basis": "memory",
    "source": "leaf litter, general literature"
   },
   "nitrogen": {
    "value": 2.6,
    "unit": "%",
    "min": 2,
    "max": 3.3,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "phosphorus": {
    "value": 0.1,
    "unit": "%",
    "min": 0.05,
    "max": 0.18,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "pace": {
    "value": 3,
    "unit": "1",
    "min": 1.5,
    "max": 5,
    "basis": "memory",
    "source": "without leaf eaters about 0.01 to 0.015 per day at 10 °C, three times oak; with them 0.02 to 0.041 (Fabre & Chauvet 1998, abstract)"
   },
   "leachableCarbon": {
    "value": 18,
    "unit": "%",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 6,
    "max": 33,
    "basis": "memory",
    "source": "air-dried leaves of 27 species lost 3.6 to 32.8 % of dry mass in three days (Taylor & Bärlocher 1996, abstract); the value of this species judged"
   }
  },
  "alder-wood": {
   "id": "alder-wood",
   "name": "alder branch",
   "about": "Wood of stream banks; tans the water for months.",
   "cautions": [
    "Collect no rotten or resinous wood, and none treated with preservative; scrub and soak it before use."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 430,
    "unit": "kg/m³",
    "min": 390,
    "max": 480,
    "basis": "memory",
    "source": "oven-dry mass over swollen volume, wood handbooks, recalled"
   },
   "use": "wood",
   "extractableCarbon": {
    "value": 40,
    "unit": "g/kg",
    "min": 15,
    "max": 80,
    "basis": "memory",
    "source": "between pine (30) and oak (90 mg C/g of sawdust, Svensson et al. 2014); judged"
   },
   "leachingDepth": {
    "value": 0.35,
    "unit": "mm",
    "distribution": "lognormal",
    "spread": 1.7,
    "min": 0.05,
    "max": 1,
    "basis": "derived",
    "source": "a branch of 4 cm gives up about 3 mg C/g of oak over months (0.3 to 8), recalled, over the 90 mg C/g of its sawdust: 4 depth / thickness"
   },
   "quickShare": {
    "value": 45,
    "unit": "%",
    "min": 30,
    "max": 60,
    "basis": "memory",
    "source": "first weeks against months; an estimate, no measurement on whole branches found"
   }
  },
  "almond-litter": {
   "id": "almond-litter",
   "name": "Indian almond leaves, dried",
   "about": "Leaves of the Indian almond: tan strongly and last some months.",
   "cautions": [
    "Leaves from roadsides or sprayed trees carry poisons; buy or gather clean ones and rinse them."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 550,
    "unit": "kg/m³",
    "min": 400,
    "max": 800,
    "basis": "assumed",
    "source": "soaked leaf: dry mass over displaced volume"
   },
   "use": "litter",
   "carbon": {
    "value": 46,
    "unit": "%",
    "min": 43,
    "max": 50,
    "basis": "memory",
    "source": "leaf litter, general literature"
   },
   "nitrogen": {
    "value": 0.9,
    "unit": "%",
    "min": 0.7,
    "max": 1.1,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "phosphorus": {
    "value": 0.06,
    "unit": "%",
    "min": 0.03,
    "max": 0.12,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "pace": {
    "value": 1.3,
    "unit": "1",
    "min": 0.5,
    "max": 2.2,
    "basis": "memory",
    "source": "0.012 (0.005 to 0.02) per day in still fresh water at 25 °C, an estimate; more than half gone in 30 d in a warm estuary with animals (Tuyor et al., abstract)"
   },
   "leachableCarbon": {
    "value": 20,
    "unit": "%",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 8,
    "max": 33,
    "basis": "memory",
    "source": "rich in tannins; air-dried leaves of 27 species lost 3.6 to 32.8 % of dry mass in three days (Taylor & Bärlocher 1996, abstract); the value of this species judged"
   }
  },
  "aragonite-sand": {
   "id": "aragonite-sand",
   "name": "aragonite sand, 0.5 to 2 mm",
   "about": "Sand of sea shells that dissolves in soft or acid water and buffers it.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 2750,
    "unit": "kg/m³",
    "min": 2500,
    "max": 2930,
    "basis": "assumed",
    "source": "mineral less closed pores"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 96,
    "unit": "%",
    "min": 93,
    "max": 99,
    "basis": "memory",
    "source": "general knowledge"
   },
   "mineral": "aragonite",
   "grain": {
    "value": 1,
    "unit": "mm",
    "min": 0.5,
    "max": 2,
    "basis": "common practice",
    "source": "sieve sizes of the trade"
   }
  },
  "basalt": {
   "id": "basalt",
   "name": "basalt",
   "about": "Heavy, dark, without lime.",
   "known": {
    "level": "well",
    "note": "The density of this kind of rock is in tables; each block differs a little."
   },
   "density": {
    "value": 2900,
    "unit": "kg/m³",
    "min": 2800,
    "max": 3000,
    "basis": "page",
    "source": "Densities of common rock types, web table of 2014"
   },
   "use": "stone"
  },
  "beech-litter": {
   "id": "beech-litter",
   "name": "beech leaves, air-dried",
   "about": "Leaves that last a year and more.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 550,
    "unit": "kg/m³",
    "min": 400,
    "max": 800,
    "basis": "assumed",
    "source": "soaked leaf: dry mass over displaced volume"
   },
   "use": "litter",
   "carbon": {
    "value": 48,
    "unit": "%",
    "min": 45,
    "max": 51,
    "basis": "memory",
    "source": "leaf litter, general literature"
   },
   "nitrogen": {
    "value": 0.9,
    "unit": "%",
    "min": 0.6,
    "max": 1.3,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "phosphorus": {
    "value": 0.05,
    "unit": "%",
    "min": 0.03,
    "max": 0.1,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "pace": {
    "value": 0.6,
    "unit": "1",
    "min": 0.25,
    "max": 1.2,
    "basis": "memory",
    "source": "0.0025 (0.001 to 0.005) per day at 12 °C (Webster & Benfield 1986, recalled); at least 0.00175 per day in neutral mountain streams (Dangles & Chauvet 2003, abstract)"
   },
   "leachableCarbon": {
    "value": 9,
    "unit": "%",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 3.6,
    "max": 25,
    "basis": "memory",
    "source": "air-dried leaves of 27 species lost 3.6 to 32.8 % of dry mass in three days (Taylor & Bärlocher 1996, abstract); the value of this species judged"
   }
  },
  "bog-wood": {
   "id": "bog-wood",
   "name": "bog wood, long soaked",
   "about": "Wood that lay in water for years and gives off little more.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 600,
    "unit": "kg/m³",
    "min": 450,
    "max": 900,
    "basis": "memory",
    "source": "oven-dry mass over swollen volume, wood handbooks, recalled"
   },
   "use": "wood",
   "extractableCarbon": {
    "value": 9,
    "unit": "g/kg",
    "min": 2,
    "max": 30,
    "basis": "memory",
    "source": "most has left in years under water; about a tenth of fresh oak, judged"
   },
   "leachingDepth": {
    "value": 0.35,
    "unit": "mm",
    "distribution": "lognormal",
    "spread": 1.7,
    "min": 0.05,
    "max": 1,
    "basis": "derived",
    "source": "a branch of 4 cm gives up about 3 mg C/g of oak over months (0.3 to 8), recalled, over the 90 mg C/g of its sawdust: 4 depth / thickness"
   },
   "quickShare": {
    "value": 15,
    "unit": "%",
    "min": 5,
    "max": 40,
    "basis": "memory",
    "source": "first weeks against months; an estimate, no measurement on whole branches found"
   }
  },
  "coarse-gravel": {
   "id": "coarse-gravel",
   "name": "gravel, 6 to 12 mm",
   "about": "Drainage and stream bed.",
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 44,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 34 % and water 10 % of volume"
   },
   "filmSurface": {
    "value": 373,
    "unit": "m²/m³",
    "min": 250,
    "max": 600,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 9 mm"
   },
   "bulkDensity": {
    "value": 1390,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 10,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: water retention"
   },
   "capillaryRise": {
    "value": 12,
    "unit": "mm",
    "min": 5,
    "max": 20,
    "basis": "memory",
    "source": "soil-physics tables, recalled: about a third of the rise in gravel of 2 to 4 mm"
   }
  },
  "coarse-sand": {
   "id": "coarse-sand",
   "name": "sand, 0.5 to 1 mm, lime-free",
   "about": "Usual ground of pools.",
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 37.5,
    "unit": "%",
    "min": 35,
    "max": 40,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "filmSurface": {
    "value": 5000,
    "unit": "m²/m³",
    "min": 3500,
    "max": 7500,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 0.75 mm"
   },
   "bulkDensity": {
    "value": 1600,
    "unit": "kg/m³",
    "min": 1500,
    "max": 1700,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "heldWater": {
    "value": 10,
    "unit": "%",
    "min": 5,
    "max": 18,
    "basis": "memory",
    "source": "field capacity of coarse sand, soil-physics tables, recalled"
   },
   "capillaryRise": {
    "value": 125,
    "unit": "mm",
    "min": 79,
    "max": 195,
    "basis": "published",
    "source": "Heath 1982, as quoted in Salim and Hampton 2012, who measured 79 mm saturated and 195 mm in all on 0.5 mm sand"
   }
  },
  "coir": {
   "id": "coir",
   "name": "coconut coir, fine",
   "about": "Coconut fibre and dust: holds water, hardly rots.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 87.5,
    "unit": "%",
    "min": 85.5,
    "max": 89.5,
    "basis": "published",
    "source": "Evans, Konduru & Stamps 1996, HortScience 31: 965-967, abstract"
   },
   "filmSurface": {
    "value": 2000,
    "unit": "m²/m³",
    "min": 500,
    "max": 5000,
    "basis": "assumed",
    "source": "fibrous; films grow on the outside of crumbs of a few millimetres"
   },
   "bulkDensity": {
    "value": 60,
    "unit": "kg/m³",
    "min": 40,
    "max": 80,
    "basis": "published",
    "source": "Evans, Konduru & Stamps 1996, HortScience 31: 965-967, abstract"
   },
   "heldWater": {
    "value": 76,
    "unit": "%",
    "min": 73,
    "max": 80,
    "basis": "published",
    "source": "Evans, Konduru and Stamps 1996, HortScience 31: 965-967, abstract"
   },
   "capillaryRise": {
    "value": 350,
    "unit": "mm",
    "min": 200,
    "max": 600,
    "basis": "assumed",
    "source": "fine fibre, between medium sand at 250 mm and peat at 300 to 600 mm"
   },
   "exchange": {
    "capacity": {
     "value": 0.5,
     "unit": "meq/g",
     "min": 0.35,
     "max": 0.7,
     "basis": "memory",
     "source": "0.39 to 0.60 meq/g (Evans, Konduru & Stamps 1996, recalled)"
    },
    "baseSaturation": {
     "value": 80,
     "unit": "%",
     "min": 60,
     "max": 95,
     "basis": "memory",
     "source": "near neutral as sold"
    },
    "calcium": {
     "value": 30,
     "unit": "%",
     "basis": "memory",
     "source": "rich in potassium and sodium, from coasts and washing; recalled"
    },
    "magnesium": {
     "value": 20,
     "unit": "%",
     "basis": "memory",
     "source": "rich in potassium and sodium, from coasts and washing; recalled"
    },
    "sodium": {
     "value": 25,
     "unit": "%",
     "basis": "memory",
     "source": "rich in potassium and sodium, from coasts and washing; recalled"
    },
    "potassium": {
     "value": 25,
     "unit": "%",
     "basis": "memory",
     "source": "rich in potassium and sodium, from coasts and washing; recalled"
    },
    "acidHold": {
     "value": 3,
     "unit": "log10",
     "min": 2,
     "max": 4,
     "basis": "assumed",
     "source": "as for humus, judged"
    }
   },
   "leaching": {
    "carbon": {
     "value": 3,
     "unit": "g/kg",
     "min": 1,
     "max": 10,
     "basis": "memory",
     "source": "tea-coloured for weeks; an estimate"
    },
    "quick": {
     "value": 50,
     "unit": "%",
     "min": 20,
     "max": 60,
     "basis": "assumed",
     "source": "first weeks against months; judged"
    }
   }
  },
  "coir-fibre": {
   "id": "coir-fibre",
   "name": "coconut fibre, over 6 mm",
   "about": "Coarse fibre that keeps ground open and walls mossy.",
   "cautions": [
    "Some lots are salty: rinse until the water tastes of nothing."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 83,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 63 % and water 20 %"
   },
   "filmSurface": {
    "value": 1000,
    "unit": "m²/m³",
    "min": 500,
    "max": 2000,
    "basis": "assumed",
    "source": "fibres of half a millimetre, loosely packed"
   },
   "bulkDensity": {
    "value": 130,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 20,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 100,
    "unit": "mm",
    "min": 50,
    "max": 200,
    "basis": "assumed",
    "source": "coarse fibre"
   }
  },
  "coir-fines": {
   "id": "coir-fines",
   "name": "coconut fines, under 6 mm",
   "about": "Fine, water-holding ground for ferns and creepers.",
   "cautions": [
    "Some lots are salty: rinse until the water tastes of nothing."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum. Other lots hold 75 to 110 g of water for each 10 g (Evans et al. 1996)."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 79,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 7 % and water 72 %"
   },
   "filmSurface": {
    "value": 2000,
    "unit": "m²/m³",
    "min": 1000,
    "max": 4000,
    "basis": "assumed",
    "source": "crumbs of a few millimetres"
   },
   "bulkDensity": {
    "value": 160,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 72,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 350,
    "unit": "mm",
    "min": 200,
    "max": 600,
    "basis": "assumed",
    "source": "fine fibre, between medium sand and peat"
   }
  },
  "compost": {
   "id": "compost",
   "name": "compost, aged and fine",
   "about": "Rich, heavy humus for hungry plants; feeds algae when it reaches the water.",
   "cautions": [
    "Compost gives off nitrogen and phosphorus for months: keep it out of the water."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 86,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 12 % and water 74 %"
   },
   "filmSurface": {
    "value": 2000,
    "unit": "m²/m³",
    "min": 1000,
    "max": 4000,
    "basis": "assumed",
    "source": "crumbs of a few millimetres"
   },
   "bulkDensity": {
    "value": 270,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 74,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 350,
    "unit": "mm",
    "basis": "assumed",
    "source": "as coir"
   }
  },
  "cork-bark": {
   "id": "cork-bark",
   "name": "cork bark",
   "about": "Light bark for walls and tubes; hardly rots and floats.",
   "cautions": [
    "It floats: glue or wedge it before filling."
   ],
   "known": {
    "level": "fairly",
    "note": "Density is in print; what it gives off into water is judged."
   },
   "density": {
    "value": 200,
    "unit": "kg/m³",
    "min": 120,
    "max": 240,
    "basis": "page",
    "source": "Dirac Delta science encyclopedia (240 kg/m³); Gibson and Ashby, Cellular Solids, recalled (120 to 240)"
   },
   "use": "wood",
   "extractableCarbon": {
    "value": 8,
    "unit": "g/kg",
    "min": 2,
    "max": 30,
    "basis": "memory",
    "source": "cork gives off some tannin; an estimate from its kind"
   },
   "leachingDepth": {
    "value": 0.35,
    "unit": "mm",
    "min": 0.05,
    "max": 1,
    "basis": "assumed",
    "source": "as for branches of oak"
   },
   "quickShare": {
    "value": 30,
    "unit": "%",
    "min": 10,
    "max": 60,
    "basis": "assumed",
    "source": "first weeks against months; judged"
   }
  },
  "crushed-coral": {
   "id": "crushed-coral",
   "name": "crushed coral, 2 to 4 mm",
   "about": "Aragonite grit that buffers soft water.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 2600,
    "unit": "kg/m³",
    "min": 2000,
    "max": 2900,
    "basis": "assumed",
    "source": "aragonite 2930 kg/m³ less closed pores"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 96,
    "unit": "%",
    "min": 93,
    "max": 99,
    "basis": "memory",
    "source": "general knowledge"
   },
   "mineral": "aragonite",
   "grain": {
    "value": 3,
    "unit": "mm",
    "min": 1,
    "max": 6,
    "basis": "common practice",
    "source": "sieve sizes of the trade"
   }
  },
  "crushed-limestone": {
   "id": "crushed-limestone",
   "name": "crushed limestone, 3 to 5 mm",
   "about": "Calcite grit that buffers soft water slowly.",
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "density": {
    "value": 2500,
    "unit": "kg/m³",
    "min": 2300,
    "max": 2700,
    "basis": "page",
    "source": "Densities of common rock types, table of 2014"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 93,
    "unit": "%",
    "min": 80,
    "max": 99,
    "basis": "memory",
    "source": "pure limestones; dolomitic stone dissolves far slower"
   },
   "mineral": "calcite",
   "grain": {
    "value": 4,
    "unit": "mm",
    "min": 2,
    "max": 8,
    "basis": "common practice",
    "source": "sieve sizes of the trade"
   }
  },
  "cuttlebone": {
   "id": "cuttlebone",
   "name": "cuttlebone, broken",
   "about": "Soft lime of cuttlefish: a source of calcium for snails, crabs and woodlice; it floats at first.",
   "cautions": [
    "Cuttlebone floats until it is soaked; rinse the salt out."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 300,
    "unit": "kg/m³",
    "min": 200,
    "max": 600,
    "basis": "assumed",
    "source": "mineral less closed pores"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 83,
    "unit": "%",
    "min": 80,
    "max": 85,
    "basis": "memory",
    "source": "general knowledge"
   },
   "mineral": "aragonite",
   "grain": {
    "value": 10,
    "unit": "mm",
    "min": 4,
    "max": 30,
    "basis": "common practice",
    "source": "size of broken pieces; porous plates, so the surface is larger than that of such grains"
   }
  },
  "dragon-stone": {
   "id": "dragon-stone",
   "name": "dragon stone",
   "about": "Pitted, clay-rich stone; brittle, its holes full of clay to be brushed out.",
   "known": {
    "level": "poorly",
    "note": "The density is that of sellers or recalled."
   },
   "density": {
    "value": 2100,
    "unit": "kg/m³",
    "min": 1800,
    "max": 2400,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "use": "stone"
  },
  "egg-crate": {
   "id": "egg-crate",
   "name": "light-diffuser grid",
   "about": "Plastic grid for false bottoms; animals get stuck in open cells.",
   "cautions": [
    "Cover it with mesh: small animals get caught in the cells."
   ],
   "known": {
    "level": "poorly",
    "note": "Recalled or of the trade; the product you buy may differ."
   },
   "use": "build",
   "made": "grid",
   "properties": {
    "cell width": {
     "value": 13.5,
     "unit": "mm",
     "min": 12,
     "max": 15,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "open area": {
     "value": 85,
     "unit": "%",
     "min": 80,
     "max": 90,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "mass by area": {
     "value": 1.85,
     "unit": "kg/m²",
     "min": 1.5,
     "max": 2.2,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "density of the plastic": {
     "value": 1050,
     "unit": "kg/m³",
     "basis": "memory",
     "source": "polystyrene"
    }
   }
  },
  "epoxy-putty": {
   "id": "epoxy-putty",
   "name": "epoxy putty",
   "about": "Two-part putty that cures under water; holds moss and stones.",
   "cautions": [
    "Uncured putty irritates skin: wear gloves."
   ],
   "known": {
    "level": "poorly",
    "note": "Recalled or of the trade; the product you buy may differ."
   },
   "use": "build",
   "made": "resin",
   "properties": {
    "density": {
     "value": 1800,
     "unit": "kg/m³",
     "min": 1600,
     "max": 2000,
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "working time": {
     "value": 35,
     "unit": "min",
     "min": 10,
     "max": 60,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    },
    "cures fully in": {
     "value": 24,
     "unit": "h",
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   }
  },
  "epoxy-resin": {
   "id": "epoxy-resin",
   "name": "epoxy resin",
   "about": "Seals foam and wood; harmless once fully cured.",
   "cautions": [
    "Uncured resin causes allergies: gloves, air, no skin contact."
   ],
   "known": {
    "level": "poorly",
    "note": "Recalled or of the trade; the product you buy may differ."
   },
   "use": "build",
   "made": "resin",
   "properties": {
    "density": {
     "value": 1150,
     "unit": "kg/m³",
     "min": 1100,
     "max": 1200,
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "can be handled after": {
     "value": 18,
     "unit": "h",
     "min": 12,
     "max": 24,
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "cures fully in": {
     "value": 7,
     "unit": "d",
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    }
   }
  },
  "expanded-clay": {
   "id": "expanded-clay",
   "name": "expanded clay pellets, 10 to 20 mm",
   "about": "Light drainage pellets.",
   "cautions": [
    "Expanded clay floats when dry: soak it and weigh it down with the layer above."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "drainage"
   ],
   "porosity": {
    "value": 42,
    "unit": "%",
    "min": 40,
    "max": 45,
    "basis": "memory",
    "source": "void between pellets, usual engineering value"
   },
   "filmSurface": {
    "value": 232,
    "unit": "m²/m³",
    "min": 150,
    "max": 400,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 15 mm"
   },
   "bulkDensity": {
    "value": 265,
    "unit": "kg/m³",
    "min": 250,
    "max": 450,
    "basis": "published",
    "source": "Leca UK, LWA characteristics page: loose bulk density"
   },
   "heldWater": {
    "value": 10,
    "unit": "%",
    "min": 5,
    "max": 20,
    "basis": "assumed",
    "source": "installed drained density of 500 kg/m³ over the long term (Leca UK) counts water inside the pellets; outside them little stays"
   },
   "capillaryRise": {
    "value": 15,
    "unit": "mm",
    "min": 0,
    "max": 30,
    "basis": "common practice",
    "source": "trade rule, no source"
   }
  },
  "expanding-foam": {
   "id": "expanding-foam",
   "name": "one-component expanding foam, cured",
   "about": "Foam that walls are shaped from; fumes until it is cured.",
   "cautions": [
    "Uncured foam gives off isocyanate (MDI), which can make people asthmatic for life: outdoors or with strong exhaust, gloves and goggles, others and animals away, and 24 h before anything goes in.",
    "Cured foam is light and floats: glue it to the glass before water reaches it."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "foam"
   ],
   "porosity": {
    "value": 5,
    "unit": "%",
    "min": 5,
    "max": 12,
    "basis": "assumed",
    "source": "70 to 80 % closed cells (Soudal data sheets); water enters cut faces only"
   },
   "filmSurface": {
    "value": 50,
    "unit": "m²/m³",
    "min": 10,
    "max": 200,
    "basis": "assumed",
    "source": "cut, rough faces only"
   },
   "bulkDensity": {
    "value": 27,
    "unit": "kg/m³",
    "min": 20,
    "max": 35,
    "basis": "published",
    "source": "Soudal Soudafoam FR data sheet, 2005"
   },
   "heldWater": {
    "value": 3,
    "unit": "%",
    "min": 0,
    "max": 8,
    "basis": "assumed",
    "source": "closed cells; cut faces only"
   },
   "capillaryRise": {
    "value": 0,
    "unit": "mm",
    "min": 0,
    "max": 5,
    "basis": "derived",
    "source": "closed cells lift no water"
   }
  },
  "false-bottom": {
   "id": "false-bottom",
   "name": "grid plate on feet, open below",
   "about": "A hollow under the land that holds water and the pump.",
   "cautions": [
    "A false bottom carries all that lies on it, wet: support it at least every 15 cm."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "false bottom"
   ],
   "porosity": {
    "value": 95,
    "unit": "%",
    "min": 90,
    "max": 98,
    "basis": "assumed",
    "source": "feet and plate of a louvre grid take up about a twentieth of the height"
   },
   "filmSurface": {
    "value": 12,
    "unit": "m²/m³",
    "min": 5,
    "max": 30,
    "basis": "assumed",
    "source": "plate and feet only"
   },
   "bulkDensity": {
    "value": 45,
    "unit": "kg/m³",
    "min": 20,
    "max": 80,
    "basis": "derived",
    "source": "grid of 1.8 kg/m² over a height of 4 to 10 cm with feet"
   },
   "heldWater": {
    "value": 1,
    "unit": "%",
    "min": 0,
    "max": 3,
    "basis": "assumed",
    "source": "feet and plate hold drops only"
   },
   "capillaryRise": {
    "value": 0,
    "unit": "mm",
    "min": 0,
    "max": 5,
    "basis": "derived",
    "source": "open space lifts no water"
   }
  },
  "filter-foam": {
   "id": "filter-foam",
   "name": "open-pore filter foam, about 20 pores per inch",
   "about": "Open foam that carries films and holds back grains.",
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "foam"
   ],
   "porosity": {
    "value": 97,
    "unit": "%",
    "min": 95,
    "max": 98,
    "basis": "published",
    "source": "Springer Encyclopedic Dictionary of Polymers: 97 % and more"
   },
   "filmSurface": {
    "value": 450,
    "unit": "m²/m³",
    "min": 200,
    "max": 656,
    "basis": "published",
    "source": "Inoac Crest: up to 200 ft² per ft³ (656 m²/m³) for the finest"
   },
   "bulkDensity": {
    "value": 28,
    "unit": "kg/m³",
    "min": 25,
    "max": 32,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "heldWater": {
    "value": 8,
    "unit": "%",
    "min": 3,
    "max": 20,
    "basis": "assumed",
    "source": "open foam of 20 pores per inch drains but for its struts"
   },
   "capillaryRise": {
    "value": 10,
    "unit": "mm",
    "min": 3,
    "max": 25,
    "basis": "derived",
    "source": "2 sigma/(rho g r) at a pore radius of 0.6 mm is 25 mm when wetted; the trade finds less"
   }
  },
  "fine-gravel": {
   "id": "fine-gravel",
   "name": "gravel, 2 to 4 mm",
   "about": "Ground for margins and streams.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "substrate",
    "drainage"
   ],
   "porosity": {
    "value": 39,
    "unit": "%",
    "min": 36,
    "max": 42,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "filmSurface": {
    "value": 1220,
    "unit": "m²/m³",
    "min": 900,
    "max": 1800,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 3 mm"
   },
   "bulkDensity": {
    "value": 1550,
    "unit": "kg/m³",
    "min": 1450,
    "max": 1650,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "heldWater": {
    "value": 6,
    "unit": "%",
    "min": 3,
    "max": 12,
    "basis": "memory",
    "source": "soil-physics tables, recalled"
   },
   "capillaryRise": {
    "value": 35,
    "unit": "mm",
    "min": 20,
    "max": 50,
    "basis": "memory",
    "source": "soil-physics tables, recalled"
   }
  },
  "fine-sand": {
   "id": "fine-sand",
   "name": "fine sand, 0.1 to 0.25 mm",
   "about": "For snails and worms that dig and fish that sift; packs and can turn airless in deep beds.",
   "cautions": [
    "Beds deeper than 5 cm turn airless below and can give off hydrogen sulphide."
   ],
   "known": {
    "level": "well",
    "note": "Porosity and rise of water are published; density is that of handbooks."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 35,
    "unit": "%",
    "basis": "published",
    "source": "Linsley, Kohler and Paulhus 1982, Hydrology for Engineers, table 6-2, as quoted in a county environmental file"
   },
   "filmSurface": {
    "value": 22290,
    "unit": "m²/m³",
    "min": 11145,
    "max": 44580,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 0.175 mm"
   },
   "bulkDensity": {
    "value": 1550,
    "unit": "kg/m³",
    "min": 1450,
    "max": 1650,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 30,
    "unit": "%",
    "min": 20,
    "max": 34,
    "basis": "assumed",
    "source": "drains hardly at all from a bed of a few centimetres"
   },
   "capillaryRise": {
    "value": 400,
    "unit": "mm",
    "basis": "published",
    "source": "Heath 1983, Basic Ground-Water Hydrology, as quoted in Salim and Hampton 2012"
   }
  },
  "flexible-tubing": {
   "id": "flexible-tubing",
   "name": "flexible PVC or silicone tubing",
   "about": "Hose between pump and outlet; aquarium-safe kinds only.",
   "known": {
    "level": "fairly",
    "note": "Partly from data sheets, partly recalled; the product you buy may differ."
   },
   "use": "build",
   "made": "tube",
   "properties": {
    "roughness": {
     "value": 0.0015,
     "unit": "mm",
     "basis": "page",
     "source": "drawn tubing/plastic row in open hydraulic component tables (Crane-derived); LMNO lists 0 for plastic"
    },
    "tolerance of the diameter": {
     "value": 0,
     "unit": "%",
     "min": -5,
     "max": 5,
     "basis": "common practice",
     "source": "rule of thumb among keepers and shops, no primary source"
    }
   }
  },
  "float-glass": {
   "id": "float-glass",
   "name": "float glass",
   "about": "Annealed glass, the usual pane of a tank; breaks into long shards.",
   "cautions": [
    "Edges cut: have them ground and wear gloves. Let a licensed glazier or builder size panes that people could fall into."
   ],
   "known": {
    "level": "well",
    "note": "Mostly from data sheets and standards as quoted; the product you buy may differ."
   },
   "use": "build",
   "made": "glass",
   "properties": {
    "density": {
     "value": 2500,
     "unit": "kg/m³",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "stiffness": {
     "value": 70,
     "unit": "GPa",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "Poisson's ratio": {
     "value": 0.215,
     "unit": "1",
     "min": 0.2,
     "max": 0.23,
     "basis": "page",
     "source": "VASGLASS product data following EN 572 (0.2); MakeItFrom (0.23)"
    },
    "characteristic bending strength": {
     "value": 45,
     "unit": "MPa",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "surface stress, three seconds": {
     "value": 23.3,
     "unit": "MPa",
     "basis": "page",
     "source": "NCSEA / ASTM E1300 model, structuralglass package"
    },
    "edge stress, three seconds": {
     "value": 18.3,
     "unit": "MPa",
     "basis": "page",
     "source": "NCSEA / ASTM E1300 model, structuralglass package"
    },
    "heat conduction": {
     "value": 1,
     "unit": "W/(m K)",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "thermal expansion": {
     "value": 0.000009,
     "unit": "1/K",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "specific heat": {
     "value": 720,
     "unit": "J/(kg K)",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "emissivity": {
     "value": 0.89,
     "unit": "1",
     "basis": "page",
     "source": "VASGLASS product data following EN 572 (EN 673 corrected value 0.837, memory)"
    },
    "light through 4 mm": {
     "value": 0.9,
     "unit": "1",
     "basis": "page",
     "source": "SCI Windows"
    },
    "refractive index": {
     "value": 1.52,
     "unit": "1",
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    }
   }
  },
  "foamed-glass": {
   "id": "foamed-glass",
   "name": "foamed-glass pebbles",
   "about": "Light drainage stone; floats when dry.",
   "cautions": [
    "It floats: weigh it down with the layer above.",
    "Broken edges are glass: wear gloves."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "drainage"
   ],
   "porosity": {
    "value": 51,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 40 % and water 11 %"
   },
   "filmSurface": {
    "value": 200,
    "unit": "m²/m³",
    "min": 100,
    "max": 400,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 15 mm"
   },
   "bulkDensity": {
    "value": 270,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 11,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 15,
    "unit": "mm",
    "min": 5,
    "max": 30,
    "basis": "assumed",
    "source": "coarse pebbles with closed pores"
   }
  },
  "forest-soil": {
   "id": "forest-soil",
   "name": "leaf mould, sand and coir mixed for a bank",
   "about": "Humus with life in it; gives off colour and nutrients when it stands in water.",
   "cautions": [
    "Soil from outdoors brings animals, seeds and germs with it; heat or buy it, and wash hands after handling."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 60,
    "unit": "%",
    "min": 45,
    "max": 75,
    "basis": "assumed",
    "source": "between sand at 37 % and coir at 88 %"
   },
   "filmSurface": {
    "value": 3000,
    "unit": "m²/m³",
    "min": 1000,
    "max": 6000,
    "basis": "assumed",
    "source": "between coir and sand"
   },
   "bulkDensity": {
    "value": 700,
    "unit": "kg/m³",
    "min": 400,
    "max": 1100,
    "basis": "assumed",
    "source": "between sand at 1600 and coir at 60 kg/m³"
   },
   "heldWater": {
    "value": 35,
    "unit": "%",
    "min": 20,
    "max": 50,
    "basis": "assumed",
    "source": "between sand at 10 % and coir at 76 %"
   },
   "capillaryRise": {
    "value": 250,
    "unit": "mm",
    "min": 120,
    "max": 450,
    "basis": "assumed",
    "source": "medium sand 250 mm (Heath 1982), leaf mould finer and coarser"
   },
   "exchange": {
    "capacity": {
     "value": 0.25,
     "unit": "meq/g",
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "about a tenth humus of 2.5 meq/g (Brady & Weil, recalled)"
    },
    "baseSaturation": {
     "value": 50,
     "unit": "%",
     "min": 20,
     "max": 80,
     "basis": "assumed",
     "source": "between acid and limed woodland soils"
    },
    "calcium": {
     "value": 70,
     "unit": "%",
     "basis": "memory",
     "source": "usual of soils"
    },
    "magnesium": {
     "value": 20,
     "unit": "%",
     "basis": "memory",
     "source": "usual of soils"
    },
    "sodium": {
     "value": 4,
     "unit": "%",
     "basis": "memory",
     "source": "usual of soils"
    },
    "potassium": {
     "value": 6,
     "unit": "%",
     "basis": "memory",
     "source": "usual of soils"
    },
    "acidHold": {
     "value": 3.5,
     "unit": "log10",
     "min": 2.5,
     "max": 4.5,
     "basis": "assumed",
     "source": "woodland soil of this saturation shows about pH 5"
    }
   },
   "leaching": {
    "carbon": {
     "value": 3,
     "unit": "g/kg",
     "min": 0.5,
     "max": 10,
     "basis": "memory",
     "source": "leaf mould in water; an estimate"
    },
    "quick": {
     "value": 50,
     "unit": "%",
     "min": 20,
     "max": 60,
     "basis": "assumed",
     "source": "first weeks against months; judged"
    }
   }
  },
  "granite": {
   "id": "granite",
   "name": "granite",
   "about": "Hard stone without lime.",
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "density": {
    "value": 2650,
    "unit": "kg/m³",
    "min": 2600,
    "max": 2700,
    "basis": "page",
    "source": "Densities of common rock types, table of 2014"
   },
   "use": "stone"
  },
  "granite-grit": {
   "id": "granite-grit",
   "name": "granite grit, 2 to 4 mm",
   "about": "Sharp grit for drainage and stream beds without lime.",
   "cautions": [
    "Sharp edges wear down the barbels of bottom fish."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 41,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 28 % and water 13 %"
   },
   "filmSurface": {
    "value": 1180,
    "unit": "m²/m³",
    "min": 590,
    "max": 2360,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 3 mm"
   },
   "bulkDensity": {
    "value": 1340,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 13,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 35,
    "unit": "mm",
    "min": 20,
    "max": 50,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   }
  },
  "gravel": {
   "id": "gravel",
   "name": "gravel, 6 to 12 mm",
   "about": "Drainage and stream bed.",
   "cautions": [
    "Rinse it; test with acid whether it holds lime."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 44,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 34 % and water 10 %"
   },
   "filmSurface": {
    "value": 370,
    "unit": "m²/m³",
    "min": 185,
    "max": 740,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 9 mm"
   },
   "bulkDensity": {
    "value": 1390,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 10,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 12,
    "unit": "mm",
    "min": 5,
    "max": 20,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   }
  },
  "grey-limestone": {
   "id": "grey-limestone",
   "name": "grey mountain limestone with white veins, fist-sized",
   "about": "Limestone pieces that harden soft water slowly.",
   "cautions": [
    "This stone hardens soft water for months."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 2600,
    "unit": "kg/m³",
    "min": 2400,
    "max": 2700,
    "basis": "assumed",
    "source": "mineral less closed pores"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 75,
    "unit": "%",
    "min": 50,
    "max": 95,
    "basis": "memory",
    "source": "general knowledge"
   },
   "mineral": "calcite",
   "grain": {
    "value": 70,
    "unit": "mm",
    "min": 30,
    "max": 150,
    "basis": "common practice",
    "source": "size of a fist"
   }
  },
  "insect-screen-10x20": {
   "id": "insect-screen-10x20",
   "name": "insect screen, 10 × 20 threads/cm",
   "about": "Mesh for vents that holds fruit flies back, not springtails.",
   "known": {
    "level": "well",
    "note": "Mostly from data sheets and standards as quoted; the product you buy may differ."
   },
   "use": "build",
   "made": "screen",
   "properties": {
    "open area": {
     "value": 35.5,
     "unit": "%",
     "min": 35,
     "max": 36,
     "basis": "page",
     "source": "Sensors 16(5):690 (2016)"
    },
    "discharge coefficient at 0.25 m/s": {
     "value": 0.266,
     "unit": "1",
     "min": 0.207,
     "max": 0.325,
     "basis": "page",
     "source": "Sensors 16(5):690 (2016), two fabrics"
    }
   }
  },
  "insect-screen-13x30": {
   "id": "insect-screen-13x30",
   "name": "insect screen, 13 × 30 threads/cm",
   "about": "Finer mesh for vents; lets less air through.",
   "known": {
    "level": "well",
    "note": "Mostly from data sheets and standards as quoted; the product you buy may differ."
   },
   "use": "build",
   "made": "screen",
   "properties": {
    "open area": {
     "value": 26.3,
     "unit": "%",
     "basis": "page",
     "source": "Sensors 16(5):690 (2016)"
    },
    "discharge coefficient at 0.25 m/s": {
     "value": 0.151,
     "unit": "1",
     "basis": "page",
     "source": "Sensors 16(5):690 (2016)"
    }
   }
  },
  "lava-gravel": {
   "id": "lava-gravel",
   "name": "crushed lava, about 10 mm",
   "about": "Crushed lava: rough, porous, light.",
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 67,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 52 % and water 15 % of volume"
   },
   "filmSurface": {
    "value": 200,
    "unit": "m²/m³",
    "min": 150,
    "max": 600,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 10 mm; pores inside the grains not counted"
   },
   "bulkDensity": {
    "value": 810,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 15,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: water retention"
   },
   "capillaryRise": {
    "value": 15,
    "unit": "mm",
    "min": 5,
    "max": 40,
    "basis": "assumed",
    "source": "coarse grains with fine inner pores that do not connect"
   }
  },
  "lava-rock": {
   "id": "lava-rock",
   "name": "lava rock, lumps",
   "about": "Light, rough and full of pores, with a large surface for films and moss.",
   "cautions": [
    "Rough edges tear fins and skin."
   ],
   "known": {
    "level": "poorly",
    "note": "The density is that of sellers or recalled."
   },
   "density": {
    "value": 1250,
    "unit": "kg/m³",
    "min": 900,
    "max": 1600,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "use": "stone"
  },
  "limestone-lump": {
   "id": "limestone-lump",
   "name": "limestone, fist-sized",
   "about": "A lump of lime that dissolves slowly.",
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "density": {
    "value": 2500,
    "unit": "kg/m³",
    "min": 2300,
    "max": 2700,
    "basis": "page",
    "source": "Densities of common rock types, table of 2014"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 93,
    "unit": "%",
    "min": 80,
    "max": 99,
    "basis": "memory",
    "source": "pure limestones; dolomitic stone dissolves far slower"
   },
   "mineral": "calcite",
   "grain": {
    "value": 70,
    "unit": "mm",
    "min": 30,
    "max": 150,
    "basis": "common practice",
    "source": "size of a fist"
   }
  },
  "marble": {
   "id": "marble",
   "name": "marble",
   "about": "Dense lime: dissolves slowly in soft or acid water and raises its hardness.",
   "known": {
    "level": "fairly",
    "note": "Density is in tables; purity differs from quarry to quarry."
   },
   "density": {
    "value": 2600,
    "unit": "kg/m³",
    "min": 2400,
    "max": 2700,
    "basis": "page",
    "source": "Densities of common rock types, web table of 2014"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 96,
    "unit": "%",
    "min": 85,
    "max": 99,
    "basis": "memory",
    "source": "nearly pure calcite; dolomite marbles hold magnesium"
   },
   "mineral": "calcite",
   "grain": {
    "value": 50,
    "unit": "mm",
    "min": 10,
    "max": 150,
    "basis": "assumed",
    "source": "a piece as bought"
   }
  },
  "medium-sand": {
   "id": "medium-sand",
   "name": "sand, 0.25 to 0.5 mm",
   "about": "Usual pool sand.",
   "known": {
    "level": "well",
    "note": "Porosity and rise of water are published; density is that of handbooks."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 35,
    "unit": "%",
    "basis": "published",
    "source": "Linsley, Kohler and Paulhus 1982, Hydrology for Engineers, table 6-2, as quoted in a county environmental file"
   },
   "filmSurface": {
    "value": 10400,
    "unit": "m²/m³",
    "min": 5200,
    "max": 20800,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 0.375 mm"
   },
   "bulkDensity": {
    "value": 1600,
    "unit": "kg/m³",
    "min": 1500,
    "max": 1700,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 26,
    "unit": "%",
    "min": 15,
    "max": 33,
    "basis": "assumed",
    "source": "between fine and coarse sand"
   },
   "capillaryRise": {
    "value": 250,
    "unit": "mm",
    "basis": "published",
    "source": "Heath 1983, Basic Ground-Water Hydrology, as quoted in Salim and Hampton 2012"
   }
  },
  "neutral-silicone": {
   "id": "neutral-silicone",
   "name": "silicone, neutral-cure",
   "about": "Cures without acid; many kinds hold fungicide.",
   "cautions": [
    "Air the room while it cures. Check that it holds no fungicide."
   ],
   "known": {
    "level": "poorly",
    "note": "Recalled or of the trade; the product you buy may differ."
   },
   "use": "build",
   "made": "sealant",
   "properties": {
    "curing depth": {
     "value": 2.5,
     "unit": "mm per 24 h",
     "min": 2,
     "max": 3,
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    },
    "skin forms after": {
     "value": 37.5,
     "unit": "min",
     "min": 15,
     "max": 60,
     "basis": "memory",
     "source": "engineering handbooks, recalled"
    }
   }
  },
  "oak-litter": {
   "id": "oak-litter",
   "name": "oak leaves, air-dried",
   "about": "Leaves that last a year or more and tan the water.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 550,
    "unit": "kg/m³",
    "min": 400,
    "max": 800,
    "basis": "assumed",
    "source": "soaked leaf: dry mass over displaced volume"
   },
   "use": "litter",
   "carbon": {
    "value": 48,
    "unit": "%",
    "min": 45,
    "max": 51,
    "basis": "memory",
    "source": "leaf litter, general literature"
   },
   "nitrogen": {
    "value": 0.9,
    "unit": "%",
    "min": 0.6,
    "max": 1.4,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "phosphorus": {
    "value": 0.06,
    "unit": "%",
    "min": 0.03,
    "max": 0.12,
    "basis": "memory",
    "source": "leaf litter at leaf fall, general literature"
   },
   "pace": {
    "value": 1,
    "unit": "1",
    "min": 0.5,
    "max": 1.7,
    "basis": "memory",
    "source": "the reference: 0.004 (0.002 to 0.007) per day at 12 °C (Webster & Benfield 1986, recalled)"
   },
   "leachableCarbon": {
    "value": 12,
    "unit": "%",
    "distribution": "lognormal",
    "spread": 1.4,
    "min": 4,
    "max": 30,
    "basis": "memory",
    "source": "air-dried leaves of 27 species lost 3.6 to 32.8 % of dry mass in three days (Taylor & Bärlocher 1996, abstract); the value of this species judged"
   }
  },
  "oak-wood": {
   "id": "oak-wood",
   "name": "oak branch",
   "about": "Heavy wood, rich in tannin.",
   "cautions": [
    "Collect no rotten or resinous wood, and none treated with preservative; scrub and soak it before use."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "density": {
    "value": 570,
    "unit": "kg/m³",
    "min": 520,
    "max": 650,
    "basis": "memory",
    "source": "oven-dry mass over swollen volume, wood handbooks, recalled"
   },
   "use": "wood",
   "extractableCarbon": {
    "value": 90,
    "unit": "g/kg",
    "min": 60,
    "max": 110,
    "basis": "published",
    "source": "sawdust gave 90 mg C/g, mostly in the first day (Svensson et al. 2014, Water Environ. J., abstract)"
   },
   "leachingDepth": {
    "value": 0.35,
    "unit": "mm",
    "distribution": "lognormal",
    "spread": 1.7,
    "min": 0.05,
    "max": 1,
    "basis": "derived",
    "source": "a branch of 4 cm gives up about 3 mg C/g of oak over months (0.3 to 8), recalled, over the 90 mg C/g of its sawdust: 4 depth / thickness"
   },
   "quickShare": {
    "value": 45,
    "unit": "%",
    "min": 30,
    "max": 60,
    "basis": "memory",
    "source": "first weeks against months; an estimate, no measurement on whole branches found"
   }
  },
  "orchid-bark": {
   "id": "orchid-bark",
   "name": "fir bark, seedling size",
   "about": "Airy ground for ferns, bromeliads and climbers; drains at once and rots slowly.",
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 79,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 64 % and water 15 %"
   },
   "filmSurface": {
    "value": 800,
    "unit": "m²/m³",
    "min": 400,
    "max": 1600,
    "basis": "assumed",
    "source": "fibrous pieces of 4 to 8 mm"
   },
   "bulkDensity": {
    "value": 210,
    "unit": "kg/m³",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 15,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 40,
    "unit": "mm",
    "min": 10,
    "max": 80,
    "basis": "assumed",
    "source": "pieces of some millimetres with open gaps"
   }
  },
  "oyster-shell": {
   "id": "oyster-shell",
   "name": "crushed oyster shell, 2 to 6 mm",
   "about": "Broken shell that buffers soft water.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "density": {
    "value": 2500,
    "unit": "kg/m³",
    "min": 2200,
    "max": 2700,
    "basis": "assumed",
    "source": "calcite 2710 kg/m³ less closed pores"
   },
   "use": "carbonate",
   "carbonate": {
    "value": 95,
    "unit": "%",
    "min": 92,
    "max": 97,
    "basis": "memory",
    "source": "general knowledge"
   },
   "mineral": "calcite",
   "grain": {
    "value": 4,
    "unit": "mm",
    "min": 1,
    "max": 8,
    "basis": "common practice",
    "source": "sieve sizes of the trade"
   }
  },
  "peat-mix": {
   "id": "peat-mix",
   "name": "potting mix on peat, moist",
   "about": "Usual potting ground: acid, holds water, slumps with time.",
   "cautions": [
    "Sold mixes hold fertiliser: keep it out of the water."
   ],
   "known": {
    "level": "fairly",
    "note": "From a growers' table of dry density, water and air by volume; the porosity is their sum."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 75,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table: air 35 % and water 40 %"
   },
   "filmSurface": {
    "value": 2000,
    "unit": "m²/m³",
    "min": 1000,
    "max": 4000,
    "basis": "assumed",
    "source": "crumbs of a few millimetres"
   },
   "bulkDensity": {
    "value": 160,
    "unit": "kg/m³",
    "min": 90,
    "max": 160,
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "heldWater": {
    "value": 40,
    "unit": "%",
    "basis": "published",
    "source": "Pacific Bulb Society wiki, growing-medium table"
   },
   "capillaryRise": {
    "value": 350,
    "unit": "mm",
    "min": 200,
    "max": 500,
    "basis": "assumed",
    "source": "as peat, coarser"
   }
  },
  "perlite": {
   "id": "perlite",
   "name": "perlite, 1 to 2 mm",
   "about": "Very light white grains that loosen ground; floats out of wet places.",
   "cautions": [
    "The dust irritates lungs and eyes: wet it before use."
   ],
   "known": {
    "level": "fairly",
    "note": "Porosity is published; the rest is recalled or judged."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 85,
    "unit": "%",
    "basis": "published",
    "source": "Anicua-Sanchez et al. 2008, Acta Horticulturae 779, abstract"
   },
   "filmSurface": {
    "value": 600,
    "unit": "m²/m³",
    "min": 300,
    "max": 1200,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 1.5 mm"
   },
   "bulkDensity": {
    "value": 100,
    "unit": "kg/m³",
    "min": 60,
    "max": 150,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 35,
    "unit": "%",
    "min": 20,
    "max": 50,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "capillaryRise": {
    "value": 100,
    "unit": "mm",
    "min": 50,
    "max": 200,
    "basis": "assumed",
    "source": "grains of 1 to 2 mm"
   }
  },
  "pine-wood": {
   "id": "pine-wood",
   "name": "pine branch",
   "about": "Resinous wood; only old, dry or long-soaked pieces.",
   "cautions": [
    "Resinous wood harms fish and invertebrates: use only pieces that lay dead for years and smell of nothing."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "density": {
    "value": 450,
    "unit": "kg/m³",
    "min": 400,
    "max": 520,
    "basis": "memory",
    "source": "oven-dry mass over swollen volume, wood handbooks, recalled"
   },
   "use": "wood",
   "extractableCarbon": {
    "value": 30,
    "unit": "g/kg",
    "min": 15,
    "max": 45,
    "basis": "published",
    "source": "sawdust gave 30 mg C/g (Svensson et al. 2014, Water Environ. J., abstract)"
   },
   "leachingDepth": {
    "value": 0.35,
    "unit": "mm",
    "distribution": "lognormal",
    "spread": 1.7,
    "min": 0.05,
    "max": 1,
    "basis": "derived",
    "source": "a branch of 4 cm gives up about 3 mg C/g of oak over months (0.3 to 8), recalled, over the 90 mg C/g of its sawdust: 4 depth / thickness"
   },
   "quickShare": {
    "value": 45,
    "unit": "%",
    "min": 30,
    "max": 60,
    "basis": "memory",
    "source": "first weeks against months; an estimate, no measurement on whole branches found"
   }
  },
  "planting-granules": {
   "id": "planting-granules",
   "name": "baked clay planting granules",
   "about": "Baked clay grains that feed roots and bind hardness at first.",
   "cautions": [
    "Some planting granules are sold charged with ammonium; rinse and test before animals go in."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 50,
    "unit": "%",
    "min": 45,
    "max": 55,
    "basis": "common practice",
    "source": "trade rule, no source"
   },
   "filmSurface": {
    "value": 1000,
    "unit": "m²/m³",
    "min": 700,
    "max": 1500,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 3 mm"
   },
   "bulkDensity": {
    "value": 950,
    "unit": "kg/m³",
    "min": 850,
    "max": 1050,
    "basis": "common practice",
    "source": "trade rule, no source"
   },
   "heldWater": {
    "value": 28,
    "unit": "%",
    "min": 20,
    "max": 40,
    "basis": "assumed",
    "source": "baked clay grains of 1 to 4 mm with inner pores"
   },
   "capillaryRise": {
    "value": 60,
    "unit": "mm",
    "min": 30,
    "max": 120,
    "basis": "assumed",
    "source": "between gravel of 2 to 4 mm and coarse sand, inner pores connected"
   },
   "exchange": {
    "capacity": {
     "value": 0.2,
     "unit": "meq/g",
     "min": 0.1,
     "max": 0.35,
     "basis": "memory",
     "source": "granulated volcanic soil; allophane 0.1 to 1.5 meq/g (Brady & Weil, recalled)"
    },
    "baseSaturation": {
     "value": 50,
     "unit": "%",
     "min": 20,
     "max": 80,
     "basis": "assumed",
     "source": "takes about 0.05 to 0.15 meq/g of alkalinity before it is spent (common practice)"
    },
    "calcium": {
     "value": 60,
     "unit": "%",
     "basis": "assumed",
     "source": "usual of soils"
    },
    "magnesium": {
     "value": 25,
     "unit": "%",
     "basis": "assumed",
     "source": "usual of soils"
    },
    "sodium": {
     "value": 10,
     "unit": "%",
     "basis": "assumed",
     "source": "usual of soils"
    },
    "potassium": {
     "value": 5,
     "unit": "%",
     "basis": "assumed",
     "source": "usual of soils"
    },
    "ammonium": {
     "value": 3,
     "unit": "%",
     "min": 0,
     "max": 10,
     "basis": "common practice",
     "source": "fertile soils give 0.05 to 0.6 mg N/g in the first month (trade rule, no source)"
    },
    "acidHold": {
     "value": 4.4,
     "unit": "log10",
     "min": 3.4,
     "max": 5.4,
     "basis": "assumed",
     "source": "new granules hold water near pH 6 (common practice, no source): hold that leaves half the sites acid at pH 6 and 0.2 mmol/L of calcium"
    }
   }
  },
  "pumice": {
   "id": "pumice",
   "name": "pumice, 3 to 8 mm",
   "about": "Light volcanic stone for airy ground and drainage; floats when dry.",
   "cautions": [
    "It floats when dry: soak it."
   ],
   "known": {
    "level": "fairly",
    "note": "Porosity is published for fine pumice; the rest is recalled or judged."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 72.2,
    "unit": "%",
    "basis": "published",
    "source": "Anicua-Sanchez et al. 2008, Acta Horticulturae 779, abstract"
   },
   "filmSurface": {
    "value": 330,
    "unit": "m²/m³",
    "min": 165,
    "max": 660,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 5 mm"
   },
   "bulkDensity": {
    "value": 500,
    "unit": "kg/m³",
    "min": 350,
    "max": 700,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 30,
    "unit": "%",
    "min": 15,
    "max": 45,
    "basis": "assumed",
    "source": "fine pores hold water, gaps drain"
   },
   "capillaryRise": {
    "value": 60,
    "unit": "mm",
    "min": 20,
    "max": 120,
    "basis": "assumed",
    "source": "pores inside grains connect poorly"
   }
  },
  "quartzite": {
   "id": "quartzite",
   "name": "quartzite",
   "about": "Hard, inert and often layered.",
   "known": {
    "level": "well",
    "note": "The density of this kind of rock is in tables; each block differs a little."
   },
   "density": {
    "value": 2700,
    "unit": "kg/m³",
    "min": 2600,
    "max": 2800,
    "basis": "page",
    "source": "Densities of common rock types, web table of 2014"
   },
   "use": "stone"
  },
  "sandstone": {
   "id": "sandstone",
   "name": "sandstone, lime-free",
   "about": "Soft stone; may be bound by lime.",
   "cautions": [
    "Drop acid on a hidden face: sandstone bound with lime fizzes and hardens the water."
   ],
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "density": {
    "value": 2400,
    "unit": "kg/m³",
    "min": 2200,
    "max": 2700,
    "basis": "page",
    "source": "Densities of common rock types, table of 2014"
   },
   "use": "stone"
  },
  "scoria": {
   "id": "scoria",
   "name": "volcanic scoria, 2 to 3.4 mm",
   "about": "Red or black volcanic grit for drainage and ground.",
   "known": {
    "level": "fairly",
    "note": "Porosity is published; the rest is recalled or judged."
   },
   "use": "layer",
   "layers": [
    "drainage",
    "substrate"
   ],
   "porosity": {
    "value": 67.5,
    "unit": "%",
    "basis": "published",
    "source": "Anicua-Sanchez et al. 2008, Acta Horticulturae 779, abstract"
   },
   "filmSurface": {
    "value": 720,
    "unit": "m²/m³",
    "min": 360,
    "max": 1440,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 2.7 mm"
   },
   "bulkDensity": {
    "value": 850,
    "unit": "kg/m³",
    "min": 700,
    "max": 1000,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 20,
    "unit": "%",
    "min": 10,
    "max": 30,
    "basis": "assumed",
    "source": "as crushed lava, finer"
   },
   "capillaryRise": {
    "value": 40,
    "unit": "mm",
    "min": 20,
    "max": 80,
    "basis": "assumed",
    "source": "grit of some millimetres"
   }
  },
  "screen-mesh": {
   "id": "screen-mesh",
   "name": "plastic screen between drainage and substrate",
   "about": "Mesh that keeps ground out of the drainage.",
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "mesh"
   ],
   "porosity": {
    "value": 60,
    "unit": "%",
    "min": 45,
    "max": 75,
    "basis": "assumed",
    "source": "open part of a window screen of glass fibre or plastic"
   },
   "filmSurface": {
    "value": 1500,
    "unit": "m²/m³",
    "min": 500,
    "max": 5000,
    "basis": "assumed",
    "source": "threads of 0.3 mm at 40 % solid: 4 x 0.4 / 0.3 mm, partly covered"
   },
   "bulkDensity": {
    "value": 500,
    "unit": "kg/m³",
    "basis": "assumed",
    "source": "40 % polymer of about 1300 kg/m³"
   },
   "heldWater": {
    "value": 5,
    "unit": "%",
    "min": 0,
    "max": 15,
    "basis": "assumed",
    "source": "drops between threads"
   },
   "capillaryRise": {
    "value": 0,
    "unit": "mm",
    "min": 0,
    "max": 5,
    "basis": "derived",
    "source": "holes of a millimetre hold drops, and a thin sheet lifts no water"
   }
  },
  "shale": {
   "id": "shale",
   "name": "shale and mudstone",
   "about": "Layered and soft; falls to mud in water by and by.",
   "cautions": [
    "Some shales hold pyrite and turn water acid: test a piece for weeks."
   ],
   "known": {
    "level": "well",
    "note": "The density of this kind of rock is in tables; each block differs a little."
   },
   "density": {
    "value": 2600,
    "unit": "kg/m³",
    "min": 2400,
    "max": 2800,
    "basis": "page",
    "source": "Densities of common rock types, web table of 2014"
   },
   "use": "stone"
  },
  "slate": {
   "id": "slate",
   "name": "slate",
   "about": "Layered stone without lime.",
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "density": {
    "value": 2750,
    "unit": "kg/m³",
    "min": 2700,
    "max": 2800,
    "basis": "page",
    "source": "Densities of common rock types, table of 2014"
   },
   "use": "stone"
  },
  "sphagnum-moss": {
   "id": "sphagnum-moss",
   "name": "sphagnum moss, dried long fibre",
   "about": "Long-fibred moss, dried: holds water and makes it sour.",
   "cautions": [
    "Dust of dried sphagnum can carry a fungus that infects cuts: wear gloves and moisten it before handling."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 97,
    "unit": "%",
    "min": 94,
    "max": 98.5,
    "basis": "derived",
    "source": "dry bulk of 20 kg/m³ over cell walls of about 1500 kg/m³, and air that stays"
   },
   "filmSurface": {
    "value": 3000,
    "unit": "m²/m³",
    "min": 1000,
    "max": 8000,
    "basis": "assumed",
    "source": "leafy strands; films grow on their outside"
   },
   "bulkDensity": {
    "value": 20,
    "unit": "kg/m³",
    "min": 10,
    "max": 30,
    "basis": "memory",
    "source": "usual engineering value"
   },
   "exchange": {
    "capacity": {
     "value": 1.2,
     "unit": "meq/g",
     "min": 0.8,
     "max": 1.62,
     "basis": "published",
     "source": "cell walls of Sphagnum russowii hold 1.07 meq/g of strong and 0.55 of weak acid sites (abstract); whole moss a little less"
    },
    "baseSaturation": {
     "value": 30,
     "unit": "%",
     "min": 10,
     "max": 60,
     "basis": "assumed",
     "source": "as for peat"
    },
    "calcium": {
     "value": 68,
     "unit": "%",
     "basis": "assumed",
     "source": "as for peat (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats)"
    },
    "magnesium": {
     "value": 25,
     "unit": "%",
     "basis": "assumed",
     "source": "as for peat (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats)"
    },
    "sodium": {
     "value": 5,
     "unit": "%",
     "basis": "assumed",
     "source": "as for peat (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats)"
    },
    "potassium": {
     "value": 1.4,
     "unit": "%",
     "basis": "assumed",
     "source": "as for peat (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats)"
    },
    "acidHold": {
     "value": 2.5,
     "unit": "log10",
     "min": 1.5,
     "max": 4,
     "basis": "assumed",
     "source": "as for peat; no fall of pH in pure water, K < Mg < Ca in salt water (J. Bryology 1992, abstract)"
    }
   },
   "leaching": {
    "carbon": {
     "value": 3,
     "unit": "g/kg",
     "min": 1,
     "max": 10,
     "basis": "memory",
     "source": "less than peat; an estimate"
    },
    "quick": {
     "value": 50,
     "unit": "%",
     "min": 20,
     "max": 60,
     "basis": "assumed",
     "source": "first weeks against months; judged"
    }
   }
  },
  "sphagnum-peat": {
   "id": "sphagnum-peat",
   "name": "sphagnum peat, raw",
   "about": "Peat: sour, holds water, tans it.",
   "cautions": [
    "Garden peat is often limed and fertilised: use raw peat sold without additives."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 94.2,
    "unit": "%",
    "basis": "published",
    "source": "Anicua-Sánchez et al. 2008, Acta Horticulturae 779, abstract"
   },
   "filmSurface": {
    "value": 2000,
    "unit": "m²/m³",
    "min": 500,
    "max": 5000,
    "basis": "assumed",
    "source": "fibrous; films grow on the outside of crumbs of a few millimetres"
   },
   "bulkDensity": {
    "value": 90,
    "unit": "kg/m³",
    "min": 60,
    "max": 130,
    "basis": "memory",
    "source": "horticultural substrate texts, recalled"
   },
   "heldWater": {
    "value": 70,
    "unit": "%",
    "min": 60,
    "max": 80,
    "basis": "memory",
    "source": "share of volume at container capacity, recalled"
   },
   "capillaryRise": {
    "value": 45,
    "unit": "cm",
    "min": 30,
    "max": 60,
    "basis": "common practice",
    "source": "trade rule, no source"
   },
   "exchange": {
    "capacity": {
     "value": 1.35,
     "unit": "meq/g",
     "min": 1.08,
     "max": 1.62,
     "basis": "published",
     "source": "middle of 108 to 162 cmol/kg (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats)"
    },
    "baseSaturation": {
     "value": 30,
     "unit": "%",
     "min": 15,
     "max": 71,
     "basis": "published",
     "source": "15 to 71 % (Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats); a low value, since acid peat is what is bought for soft water"
    },
    "calcium": {
     "value": 68,
     "unit": "%",
     "basis": "published",
     "source": "Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats"
    },
    "magnesium": {
     "value": 25,
     "unit": "%",
     "basis": "published",
     "source": "Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats"
    },
    "sodium": {
     "value": 5,
     "unit": "%",
     "basis": "published",
     "source": "Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats"
    },
    "potassium": {
     "value": 1.4,
     "unit": "%",
     "basis": "published",
     "source": "Rippy & Nelson 2007, HortScience 42: 349, abstract, 64 moss peats"
    },
    "acidHold": {
     "value": 2.5,
     "unit": "log10",
     "min": 1.5,
     "max": 4,
     "basis": "assumed",
     "source": "raw peat of this saturation with little calcium in its water shows about pH 4"
    }
   },
   "leaching": {
    "carbon": {
     "value": 5,
     "unit": "g/kg",
     "min": 1,
     "max": 15,
     "basis": "memory",
     "source": "sphagnum peat in filtered water gives 1 to 15 mg C/g over weeks; an estimate"
    },
    "quick": {
     "value": 40,
     "unit": "%",
     "min": 20,
     "max": 60,
     "basis": "assumed",
     "source": "first weeks against months; judged"
    }
   }
  },
  "structural-silicone": {
   "id": "structural-silicone",
   "name": "structural silicone, design values",
   "about": "What a glued joint may carry for long; a builder reckons with it.",
   "known": {
    "level": "fairly",
    "note": "Partly from data sheets, partly recalled; the product you buy may differ."
   },
   "use": "build",
   "made": "sealant",
   "properties": {
    "design strength, short load": {
     "value": 138,
     "unit": "kPa",
     "basis": "page",
     "source": "20 lbf/in2 in Kubal, Construction Waterproofing Handbook p. 5.51"
    },
    "design strength, permanent load": {
     "value": 7,
     "unit": "kPa",
     "basis": "memory",
     "source": "about 1 lbf/in2 for dead load, ASTM C1401 practice"
    }
   }
  },
  "toughened-glass": {
   "id": "toughened-glass",
   "name": "toughened glass",
   "about": "Heat-treated glass, stronger, cannot be drilled afterwards and falls to crumbs all at once.",
   "cautions": [
    "A chipped edge can burst the whole pane and let the water out at once."
   ],
   "known": {
    "level": "well",
    "note": "Mostly from data sheets and standards as quoted; the product you buy may differ."
   },
   "use": "build",
   "made": "glass",
   "properties": {
    "characteristic bending strength": {
     "value": 120,
     "unit": "MPa",
     "basis": "page",
     "source": "VASGLASS product data following EN 572"
    },
    "surface stress, three seconds": {
     "value": 93.1,
     "unit": "MPa",
     "basis": "page",
     "source": "NCSEA / ASTM E1300 model, structuralglass package"
    }
   }
  },
  "tree-fern-fibre": {
   "id": "tree-fern-fibre",
   "name": "tree-fern fibre",
   "about": "Black fibre for walls and epiphytes, slow to rot.",
   "cautions": [
    "Tree ferns are listed in CITES Appendix II: buy fibre with papers."
   ],
   "known": {
    "level": "poorly",
    "note": "Density and water are those of sellers; the rest is judged."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 85,
    "unit": "%",
    "min": 75,
    "max": 92,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "filmSurface": {
    "value": 1000,
    "unit": "m²/m³",
    "min": 500,
    "max": 2000,
    "basis": "assumed",
    "source": "fibres of half a millimetre"
   },
   "bulkDensity": {
    "value": 220,
    "unit": "kg/m³",
    "min": 150,
    "max": 300,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "heldWater": {
    "value": 40,
    "unit": "%",
    "min": 30,
    "max": 50,
    "basis": "common practice",
    "source": "rule of thumb among keepers and shops, no primary source"
   },
   "capillaryRise": {
    "value": 120,
    "unit": "mm",
    "min": 50,
    "max": 200,
    "basis": "assumed",
    "source": "coarse fibre"
   }
  },
  "zeolite": {
   "id": "zeolite",
   "name": "zeolite, 0.25 to 0.5 mm",
   "about": "Holds ammonium and gives back sodium or potassium until it is full. Its exchange is not computed here.",
   "known": {
    "level": "poorly",
    "note": "Porosity is published; all else, and how much ammonium it binds, is recalled or judged."
   },
   "use": "layer",
   "layers": [
    "substrate"
   ],
   "porosity": {
    "value": 70.18,
    "unit": "%",
    "basis": "published",
    "source": "Anicua-Sanchez et al. 2008, Acta Horticulturae 779, abstract"
   },
   "filmSurface": {
    "value": 4770,
    "unit": "m²/m³",
    "min": 2385,
    "max": 9540,
    "basis": "derived",
    "source": "spheres of the mean grain d at this porosity: 6 (1 - porosity) / d, d = 0.375 mm"
   },
   "bulkDensity": {
    "value": 900,
    "unit": "kg/m³",
    "min": 750,
    "max": 1000,
    "basis": "memory",
    "source": "engineering handbooks, recalled"
   },
   "heldWater": {
    "value": 40,
    "unit": "%",
    "min": 25,
    "max": 55,
    "basis": "assumed",
    "source": "fine grains with pores"
   },
   "capillaryRise": {
    "value": 250,
    "unit": "mm",
    "basis": "assumed",
    "source": "as sand of this grain"
   }
  }
 },
 "waters": {
  "distilled": {
   "id": "distilled",
   "name": "distilled or reverse osmosis water",
   "known": {
    "level": "well",
    "note": "Pure water has nothing to be known."
   },
   "origin": "pure",
   "ions": {
    "calcium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "magnesium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "sodium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "potassium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "chloride": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "sulfate": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "nitrate": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "phosphate": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    },
    "dissolvedOrganicCarbon": {
     "value": 0,
     "unit": "mg/L",
     "basis": "common practice",
     "source": "fresh distillate holds less than 2 mg/L in all; taken as none"
    }
   }
  },
  "hard-tap": {
   "id": "hard-tap",
   "name": "hard tap water from chalk or limestone",
   "cautions": [
    "Tap water may hold chlorine or chloramine: treat it or let it stand before animals meet it."
   ],
   "known": {
    "level": "poorly",
    "note": "Invented after ordinary analyses; put in the analysis of your own water."
   },
   "origin": "tap",
   "ions": {
    "calcium": {
     "value": 100,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "magnesium": {
     "value": 9.7,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "sodium": {
     "value": 18.4,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "potassium": {
     "value": 2.3,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "chloride": {
     "value": 32,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "sulfate": {
     "value": 43,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "nitrate": {
     "value": 18.6,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "phosphate": {
     "value": 0.3,
     "unit": "mg P/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    },
    "dissolvedOrganicCarbon": {
     "value": 0.8,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of chalk ground water"
    }
   }
  },
  "rain": {
   "id": "rain",
   "name": "clean rain, inland",
   "cautions": [
    "Rain off a roof carries what lies on the roof: let the first rain run off, and use none from copper, zinc or lead."
   ],
   "known": {
    "level": "poorly",
    "note": "Invented after ordinary analyses; put in the analysis of your own water."
   },
   "origin": "rain",
   "ions": {
    "calcium": {
     "value": 0.4,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "magnesium": {
     "value": 0.1,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "sodium": {
     "value": 0.6,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "potassium": {
     "value": 0.15,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "chloride": {
     "value": 1,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "sulfate": {
     "value": 1.1,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "ammonium": {
     "value": 0.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "nitrate": {
     "value": 1.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "phosphate": {
     "value": 0.01,
     "unit": "mg P/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    },
    "dissolvedOrganicCarbon": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after the order of magnitude of rain chemistry in northern Europe since 2010"
    }
   }
  },
  "reverse-osmosis": {
   "id": "reverse-osmosis",
   "name": "reverse osmosis water, household membrane",
   "about": "What such a membrane lets through differs with its age and the tap: measure the conductivity. Fresh and over soft water it is close to distilled.",
   "cautions": [
    "Waste the first litres after a rest, and change cartridges when the conductivity rises. A membrane does not hold chloramine back without a carbon stage."
   ],
   "known": {
    "level": "poorly",
    "note": "Invented after ordinary analyses; put in the analysis of your own water."
   },
   "origin": "pure",
   "ions": {
    "calcium": {
     "value": 2,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "magnesium": {
     "value": 0.2,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "sodium": {
     "value": 1.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "potassium": {
     "value": 0.1,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "chloride": {
     "value": 2.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "sulfate": {
     "value": 0.8,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "nitrate": {
     "value": 1,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "phosphate": {
     "value": 0,
     "unit": "mg P/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    },
    "dissolvedOrganicCarbon": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented: what an ordinary membrane lets through of hard tap water, 2 % of the twofold and 5 to 10 % of the single charges"
    }
   }
  },
  "rostock-zarnewanz": {
   "id": "rostock-zarnewanz",
   "name": "tap water of Zarnewanz waterworks near Rostock",
   "about": "A real analysis. Positive ions 4.17 meq/L against 4.04 meq/L of negative ones with the acid capacity of 3.05 mmol/L: they agree within 1.6 %. pH 7.61 at the works.",
   "cautions": [
    "Tap water may hold chlorine or chloramine: treat it or let it stand before animals meet it."
   ],
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "origin": "tap",
   "ions": {
    "calcium": {
     "value": 66.3,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "magnesium": {
     "value": 5.72,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "sodium": {
     "value": 8.23,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "potassium": {
     "value": 1.16,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "chloride": {
     "value": 18.5,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "sulfate": {
     "value": 21.5,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026; below 0.1 mg/L"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026; below 0.01 mg/L"
    },
    "nitrate": {
     "value": 1.03,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
    },
    "phosphate": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "not reported; taken as none"
    },
    "dissolvedOrganicCarbon": {
     "value": 3.8,
     "unit": "mg/L",
     "basis": "page",
     "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026; total organic carbon, taken as dissolved"
    }
   },
   "alkalinity": {
    "value": 3.05,
    "unit": "meq/L",
    "basis": "page",
    "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
   },
   "conductivity": {
    "value": 429,
    "unit": "µS/cm",
    "basis": "page",
    "source": "Nordwasser GmbH, Rostock: published drinking-water analysis, outlet of Zarnewanz waterworks, samples of 7 January 2026"
   }
  },
  "soft-tap": {
   "id": "soft-tap",
   "name": "soft tap water from an upland reservoir",
   "cautions": [
    "Tap water may hold chlorine or chloramine: treat it or let it stand before animals meet it."
   ],
   "known": {
    "level": "poorly",
    "note": "Invented after ordinary analyses; put in the analysis of your own water."
   },
   "origin": "tap",
   "ions": {
    "calcium": {
     "value": 8,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "magnesium": {
     "value": 1.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "sodium": {
     "value": 7,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "potassium": {
     "value": 0.6,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "chloride": {
     "value": 9,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "sulfate": {
     "value": 10,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "nitrate": {
     "value": 2,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "phosphate": {
     "value": 0.5,
     "unit": "mg P/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    },
    "dissolvedOrganicCarbon": {
     "value": 1.5,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "invented after ordinary analyses of treated upland water"
    }
   }
  },
  "voehringen": {
   "id": "voehringen",
   "name": "tap water of Vöhringen on the Iller",
   "about": "A real analysis. Positive ions 6.88 meq/L against 7.05 meq/L of negative ones with the acid capacity of 5.72 mmol/L: they agree within 1.2 %. pH 7.41.",
   "cautions": [
    "Tap water may hold chlorine or chloramine: treat it or let it stand before animals meet it."
   ],
   "known": {
    "level": "well",
    "note": "Nearly all values are in print or reckoned from such."
   },
   "origin": "tap",
   "ions": {
    "calcium": {
     "value": 94.4,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "magnesium": {
     "value": 18.3,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "sodium": {
     "value": 13.9,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "potassium": {
     "value": 2.3,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "chloride": {
     "value": 24.4,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "sulfate": {
     "value": 18.1,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "ammonium": {
     "value": 0,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025; below 0.01 mg/L"
    },
    "nitrite": {
     "value": 0,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025; below 0.01 mg/L"
    },
    "nitrate": {
     "value": 16.4,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
    },
    "phosphate": {
     "value": 0,
     "unit": "mg/L",
     "basis": "assumed",
     "source": "not reported; taken as none"
    },
    "dissolvedOrganicCarbon": {
     "value": 0.4,
     "unit": "mg/L",
     "basis": "page",
     "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025; total organic carbon, taken as dissolved"
    }
   },
   "alkalinity": {
    "value": 5.72,
    "unit": "meq/L",
    "basis": "page",
    "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
   },
   "conductivity": {
    "value": 651,
    "unit": "µS/cm",
    "basis": "page",
    "source": "Stadt Vöhringen, Bavaria: published drinking-water analysis, sampled at the town hall on 12 June 2025"
   }
  }
 },
 "salts": {
  "baking-soda": {
   "id": "baking-soda",
   "name": "baking soda, sodium bicarbonate",
   "cautions": [
    "Baking powder and washing soda are other things: baking powder holds acids and starch, washing soda is caustic and raises pH far more."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "alsoCalled": [
    "sodium-bicarbonate",
    "bicarbonate-of-soda"
   ],
   "formula": "NaHCO3",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 96,
    "unit": "g/L",
    "min": 90,
    "max": 100,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 880,
    "unit": "kg/m³",
    "min": 690,
    "max": 1050,
    "basis": "page",
    "source": "inter-bulk.com, bulk densities: baking soda 55 lb/ft³; simetric.co.uk has 43 lb/ft³ (689 kg/m³)"
   },
   "dissolving": "quick",
   "use": "Raises KH without GH; brings sodium. Sold for baking (E 500)."
  },
  "calcium-carbonate": {
   "id": "calcium-carbonate",
   "name": "calcium carbonate powder",
   "cautions": [
    "A powder stirred into water clouds it for days and dissolves only as far as CO2 allows; crushed coral or limestone in the filter does the same at its own pace."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "alsoCalled": [
    "chalk"
   ],
   "formula": "CaCO3",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 0.014,
    "unit": "g/L",
    "min": 0.01,
    "max": 0.06,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water; in water without CO2"
   },
   "bulkDensity": {
    "value": 700,
    "unit": "kg/m³",
    "min": 400,
    "max": 1100,
    "basis": "assumed",
    "source": "judged after fine chalk powder, which differs much by grain"
   },
   "dissolving": "with carbon dioxide",
   "use": "Raises GH and KH together, as chalk or limestone does, once CO2 has dissolved it. A food additive (E 170)."
  },
  "calcium-chloride": {
   "id": "calcium-chloride",
   "name": "calcium chloride dihydrate",
   "cautions": [
    "Calcium chloride grows hot in water and irritates eyes and skin: wear glasses, put salt into water and never water onto salt.",
    "It draws water from the air: a pack left open holds less salt per gram; keep it shut tight."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "alsoCalled": [
    "calcium-chloride-dihydrate"
   ],
   "formula": "CaCl2.2H2O",
   "purity": {
    "value": 98,
    "unit": "%",
    "min": 90,
    "max": 100,
    "basis": "memory",
    "source": "food grade of the dihydrate 97 to 103 % as dihydrate; it takes up water from air"
   },
   "solubility": {
    "value": 1300,
    "unit": "g/L",
    "min": 970,
    "max": 1350,
    "basis": "derived",
    "source": "74.5 g of CaCl2 in 100 g of water at 20 °C (J. Stolfi, tables of solubility in water, ic.unicamp.br), as dihydrate, its own water counted with the solvent",
    "note": "trade sheets that do not count it print about 970 g/L"
   },
   "bulkDensity": {
    "value": 850,
    "unit": "kg/m³",
    "min": 750,
    "max": 1000,
    "basis": "memory",
    "source": "makers' sheets of flakes and granules: 800 to 950 kg/m³; recalled"
   },
   "dissolving": "quick",
   "use": "Raises calcium and GH without KH and without sulfate. Sold for cheese making and as a food additive (E 509)."
  },
  "calcium-chloride-hexahydrate": {
   "id": "calcium-chloride-hexahydrate",
   "name": "calcium chloride hexahydrate",
   "cautions": [
    "Irritates eyes. It melts at 30 °C and draws water from the air: keep it cool and shut tight."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "formula": "CaCl2.6H2O",
   "purity": {
    "value": 98,
    "unit": "%",
    "min": 95,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 1500,
    "unit": "g/L",
    "min": 1000,
    "max": 4500,
    "basis": "assumed",
    "source": "far more than is ever used; melts in its own water at 30 °C"
   },
   "bulkDensity": {
    "value": 850,
    "unit": "kg/m³",
    "min": 650,
    "max": 1000,
    "basis": "assumed",
    "source": "judged after loose fine crystals; packing and grain change it by a fifth either way"
   },
   "dissolving": "quick",
   "use": "Raises calcium and GH without KH and without sulfate; the form with most water. A laboratory and pharmacy salt."
  },
  "epsom-salt": {
   "id": "epsom-salt",
   "name": "Epsom salt, magnesium sulfate heptahydrate",
   "cautions": [
    "Bath salts often hold scent, dye or oil: use the plain salt only. Swallowed by the spoon it purges."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "alsoCalled": [
    "epsom",
    "magnesium-sulfate",
    "bitter-salt"
   ],
   "formula": "MgSO4.7H2O",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 1060,
    "unit": "g/L",
    "min": 700,
    "max": 1130,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water",
    "note": "sources differ by whether the water of the crystals is counted"
   },
   "bulkDensity": {
    "value": 900,
    "unit": "kg/m³",
    "min": 700,
    "max": 1050,
    "basis": "assumed",
    "source": "judged after loose fine crystals; packing and grain change it by a fifth either way"
   },
   "dissolving": "quick",
   "use": "Raises magnesium and GH without KH and without chloride. Sold as a bath and garden salt and in pharmacies."
  },
  "gypsum": {
   "id": "gypsum",
   "name": "gypsum, calcium sulfate dihydrate",
   "cautions": [
    "Plaster of Paris is another salt (half the water, sets hard): use the dihydrate. Keep its dust out of the lungs."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "alsoCalled": [
    "calcium-sulfate",
    "brewers-gypsum"
   ],
   "formula": "CaSO4.2H2O",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 2.4,
    "unit": "g/L",
    "min": 2,
    "max": 2.7,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 800,
    "unit": "kg/m³",
    "min": 600,
    "max": 1100,
    "basis": "memory",
    "source": "engineering tables of bulk solids: gypsum powder 640 to 1120 kg/m³; recalled"
   },
   "dissolving": "slow",
   "use": "Raises calcium and GH without KH and without chloride. Sold for brewing and as a food additive (E 516)."
  },
  "magnesium-chloride": {
   "id": "magnesium-chloride",
   "name": "magnesium chloride hexahydrate",
   "cautions": [
    "It draws water from the air: keep it shut tight. Sea-made nigari holds bromide and sodium besides: use a pure grade."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "alsoCalled": [
    "nigari"
   ],
   "formula": "MgCl2.6H2O",
   "purity": {
    "value": 97,
    "unit": "%",
    "min": 90,
    "max": 100,
    "basis": "memory",
    "source": "food grade; it takes up water from air"
   },
   "solubility": {
    "value": 2350,
    "unit": "g/L",
    "min": 1600,
    "max": 2500,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 850,
    "unit": "kg/m³",
    "min": 700,
    "max": 1000,
    "basis": "assumed",
    "source": "judged after loose fine crystals; packing and grain change it by a fifth either way"
   },
   "dissolving": "quick",
   "use": "Raises magnesium and GH without KH and without sulfate. Sold as nigari for tofu (E 511)."
  },
  "potassium-bicarbonate": {
   "id": "potassium-bicarbonate",
   "name": "potassium bicarbonate",
   "cautions": [
    "Potassium carbonate (potash) is another, caustic salt: check the name on the pack. Some packs hold magnesium oxide so that they pour; take one without."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "formula": "KHCO3",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 333,
    "unit": "g/L",
    "min": 320,
    "max": 362,
    "basis": "page",
    "source": "memim.com, potassium bicarbonate: 333 g/L at 20 °C"
   },
   "bulkDensity": {
    "value": 1040,
    "unit": "kg/m³",
    "min": 900,
    "max": 1200,
    "basis": "page",
    "source": "vizagchemical.com, potassium bicarbonate, food grade: 65 lb/ft³"
   },
   "dissolving": "quick",
   "use": "Raises KH without GH and without sodium; plants take the potassium up. Sold for wine making and baking (E 501)."
  },
  "potassium-chloride": {
   "id": "potassium-chloride",
   "name": "potassium chloride",
   "cautions": [
    "Salt substitutes are often mixtures: use plain potassium chloride. Much potassium harms some invertebrates."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "formula": "KCl",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 342,
    "unit": "g/L",
    "min": 335,
    "max": 350,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 1050,
    "unit": "kg/m³",
    "min": 900,
    "max": 1200,
    "basis": "assumed",
    "source": "judged after loose fine crystals; packing and grain change it by a fifth either way"
   },
   "dissolving": "quick",
   "use": "Brings potassium and chloride without hardness. Sold as a substitute for table salt (E 508)."
  },
  "potassium-sulfate": {
   "id": "potassium-sulfate",
   "name": "potassium sulfate",
   "cautions": [
    "Fertiliser grades may hold other salts and metals: use a pure grade. Much potassium harms some invertebrates."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "formula": "K2SO4",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 111,
    "unit": "g/L",
    "min": 105,
    "max": 120,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 1300,
    "unit": "kg/m³",
    "min": 1000,
    "max": 1500,
    "basis": "assumed",
    "source": "judged after loose fine crystals; packing and grain change it by a fifth either way"
   },
   "dissolving": "quick",
   "use": "Brings potassium for plants without hardness. A fertiliser and food additive (E 515)."
  },
  "slaked-lime": {
   "id": "slaked-lime",
   "name": "slaked lime, calcium hydroxide",
   "cautions": [
    "Slaked lime is caustic and can blind: goggles and gloves, no dust, children away; rinse eyes at once for a quarter of an hour and see a doctor.",
    "Its solution has a pH above 12 until CO2 has turned it into bicarbonate: never into water with animals; bubble CO2 or air through until the pH is below 8.5."
   ],
   "known": {
    "level": "poorly",
    "note": "Values are recalled, of the trade or judged; none or hardly any is in print."
   },
   "alsoCalled": [
    "calcium-hydroxide",
    "pickling-lime"
   ],
   "formula": "Ca(OH)2",
   "purity": {
    "value": 95,
    "unit": "%",
    "min": 85,
    "max": 98,
    "basis": "memory",
    "source": "it turns into carbonate in air"
   },
   "solubility": {
    "value": 1.65,
    "unit": "g/L",
    "min": 1.5,
    "max": 1.8,
    "basis": "memory",
    "source": "Handbook of Chemistry and Physics, aqueous solubility of inorganic compounds at various temperatures; recalled, turned into mass per litre of water"
   },
   "bulkDensity": {
    "value": 500,
    "unit": "kg/m³",
    "min": 400,
    "max": 640,
    "basis": "memory",
    "source": "hydrated lime 400 to 640 kg/m³; recalled"
   },
   "dissolving": "with carbon dioxide",
   "use": "Raises GH and KH together as soon as CO2 has turned it into bicarbonate. Caustic. A food additive (E 526)."
  },
  "table-salt": {
   "id": "table-salt",
   "name": "table salt, sodium chloride",
   "cautions": [
    "Without iodine and without anti-caking agent (ferrocyanide): pickling or kosher salt. Most moss, fern and soft-water animals take salt badly."
   ],
   "known": {
    "level": "fairly",
    "note": "Some values are in print, the others recalled or judged."
   },
   "alsoCalled": [
    "sodium-chloride"
   ],
   "formula": "NaCl",
   "purity": {
    "value": 99,
    "unit": "%",
    "min": 97,
    "max": 100,
    "basis": "memory",
    "source": "food and pharmacy grades hold at least this; the rest is mostly moisture"
   },
   "solubility": {
    "value": 359,
    "unit": "g/L",
    "min": 355,
    "max": 362,
    "basis": "published",
    "source": "6.136 mol per kg of water at 20 °C, CRC Handbook of Chemistry and Physics, 98th edition, as transcribed in chicolucio/solutions (table of common salts); times 58.44 g/mol"
   },
   "bulkDensity": {
    "value": 1200,
    "unit": "kg/m³",
    "min": 1050,
    "max": 1350,
    "basis": "memory",
    "source": "fine table salt 1100 to 1300 kg/m³; recalled"
   },
   "dissolving": "quick",
   "use": "Brings sodium and chloride without hardness; rarely wanted in soft water. Use pickling salt."
  }
 },
 "parameters": {
  "ammonia-oxidation": {
   "process": "ammonia-oxidation",
   "parameters": {
    "maximumGrowth": {
     "value": 0.75,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.35,
     "max": 1.1,
     "basis": "memory",
     "source": "ammonia oxidisers at 20 degC, Henze et al. 2000 and Wiesmann 1994; recalled"
    },
    "activationEnergy": {
     "value": 68,
     "unit": "kJ/mol",
     "distribution": "normal",
     "spread": 4,
     "min": 56,
     "max": 80,
     "basis": "published",
     "source": "Vannecke & Volcke 2015, supporting information; equals a factor of 1.099 per degree"
    },
    "yield": {
     "value": 0.18,
     "unit": "g COD/g N",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 0.13,
     "max": 0.24,
     "basis": "memory",
     "source": "Wiesmann 1994; recalled"
    },
    "nitrogenHalf": {
     "value": 0.6,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.2,
     "max": 1.5,
     "basis": "memory",
     "source": "Wiesmann 1994; recalled"
    },
    "oxygenHalf": {
     "value": 0.4,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.2,
     "max": 1,
     "basis": "memory",
     "source": "Henze et al. 2000; recalled"
    },
    "inorganicCarbonHalf": {
     "value": 0.05,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.01,
     "max": 0.3,
     "basis": "assumed",
     "source": "nitrifying films slow down below about 45 mg CaCO3/L of alkalinity (Biesterfeld et al. 2003, recalled), yet work on in soft acid waters: 95 % of the rate there and half at a twentieth of it"
    },
    "phosphateHalf": {
     "value": 0.01,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.002,
     "max": 0.04,
     "basis": "memory",
     "source": "ASM2d, Henze et al. 2000; recalled"
    },
    "acidSide": {
     "value": 6.2,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 5.4,
     "max": 7,
     "basis": "memory",
     "source": "suspended cultures: little left at pH 6 and full rate from 7.2 to 8.5 (recalled), half rate near 6.5; films and soft-water tanks go on nitrifying near pH 6, half rate nearer 6; the middle taken"
    },
    "alkalineSide": {
     "value": 9.6,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 9,
     "max": 10.5,
     "basis": "memory",
     "source": "symmetric to the acid side around an optimum near pH 8; recalled"
    },
    "arealCapacity": {
     "value": 0.19,
     "unit": "g N/m²/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.06,
     "max": 0.45,
     "basis": "memory",
     "source": "fed biofilters at 25 degC 0.1 to 0.6, mostly 0.3 g N/m2/d (Timmons & Ebeling, recalled), brought to 20 degC"
    },
    "decayRate": {
     "value": 0.08,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.03,
     "max": 0.15,
     "basis": "memory",
     "source": "Henze et al. 2000 and Wiesmann 1994; recalled"
    },
    "decayTheta": {
     "value": 1.1,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.05,
     "max": 1.13,
     "basis": "memory",
     "source": "activated sludge models 2d and 3 in Henze et al. 2000: 0.05 per day at 10 degC and 0.15 at 20 degC make 1.116; older handbooks 1.05; recalled"
    }
   }
  },
  "animal-release": {
   "process": "animal-release",
   "parameters": {
    "timeConstant": {
     "value": 6,
     "unit": "h",
     "distribution": "fixed",
     "basis": "assumed",
     "source": "spreads the sum of a day over the hours after it"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "fixed",
     "basis": "assumed",
     "source": "as for bacteria; keeps respiration from using oxygen that is not there"
    }
   }
  },
  "attached-algae": {
   "process": "attached-algae",
   "parameters": {
    "maximumGrowth": {
     "value": 0.7,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.3,
     "max": 1.5,
     "basis": "memory",
     "source": "attached algae at 20 degC, Bowie et al. 1985; recalled"
    },
    "growthTheta": {
     "value": 1.066,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.04,
     "max": 1.1,
     "basis": "page",
     "source": "default of QUAL2Kw, read in its public source"
    },
    "heatLimit": {
     "value": 35,
     "unit": "°C",
     "distribution": "normal",
     "spread": 2,
     "min": 30,
     "max": 40,
     "basis": "memory",
     "source": "green algae and diatoms of films thrive to 28 to 32 degC; recalled"
    },
    "lightHalf": {
     "value": 32,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 12,
     "max": 120,
     "basis": "memory",
     "source": "films acclimate to their light: 20 to 60 in dim places, to 150 in bright ones; recalled. Common practice, no source: glass under 30 µmol/m2/s still turns green in weeks"
    },
    "nitrogenHalf": {
     "value": 0.02,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.005,
     "max": 0.1,
     "basis": "memory",
     "source": "set below the saturation at 8.5 to 60 µg N/L of Schmidt et al. 2019 (abstract)"
    },
    "phosphorusHalf": {
     "value": 0.002,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0005,
     "max": 0.01,
     "basis": "memory",
     "source": "set below the saturation at 2.5 to 6.1 µg P/L of Schmidt et al. 2019 (abstract)"
    },
    "carbonHalf": {
     "value": 0.013,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.004,
     "max": 0.06,
     "basis": "memory",
     "source": "default of QUAL2K for bottom algae, 1.3e-5 mol/L; recalled"
    },
    "preferenceHalf": {
     "value": 0.025,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.008,
     "max": 0.1,
     "basis": "memory",
     "source": "default of QUAL2K, 25 µg N/L; recalled"
    },
    "respirationRate": {
     "value": 0.05,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.02,
     "max": 0.2,
     "basis": "memory",
     "source": "0.03 to 0.2, Bowie et al. 1985; recalled; films of dim places lie at the low end"
    },
    "lossRate": {
     "value": 0.02,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.006,
     "max": 0.1,
     "basis": "assumed",
     "source": "sloughing and death of an ungrazed film; with the other values films come to rest at 2 to 25 g dry/m2 under 40 to 100 µmol/m2/s, as estimated for tanks; grazers come on top"
    },
    "lossTheta": {
     "value": 1.05,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.02,
     "max": 1.08,
     "basis": "page",
     "source": "default of QUAL2Kw, read in its public source"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.6,
     "basis": "assumed",
     "source": "as for bacteria"
    }
   }
  },
  "bacterial-film": {
   "process": "bacterial-film",
   "parameters": {
    "maximumGrowth": {
     "value": 0.5,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.15,
     "max": 2,
     "basis": "assumed",
     "source": "suspended heterotrophs 3 to 13 per day (Henze et al. 2000, recalled); films are held by what diffuses into them"
    },
    "theta": {
     "value": 1.05,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.02,
     "max": 1.09,
     "basis": "page",
     "source": "default of QUAL2Kw for organic matter, read in its public source"
    },
    "yield": {
     "value": 0.4,
     "unit": "mol C/mol C",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.2,
     "max": 0.6,
     "basis": "memory",
     "source": "0.2 to 0.6 on labile matter, Henze et al. 2000; recalled"
    },
    "detritusHalf": {
     "value": 0.02,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.004,
     "max": 0.1,
     "basis": "assumed",
     "source": "0.5 g dry of detritus per film surface, about as much as the film itself"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs 0.1 to 0.5 mg/L, Henze et al. 2000; recalled"
    },
    "decayRate": {
     "value": 0.1,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.03,
     "max": 0.3,
     "basis": "assumed",
     "source": "sloughing and small grazers: the film is renewed in ten days"
    }
   }
  },
  "carbonate-dissolution": {
   "process": "carbonate-dissolution",
   "parameters": {
    "roughness": {
     "value": 4,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 2,
     "max": 10,
     "basis": "memory",
     "source": "2 to 4 for limestone chips, toward 10 for coral and shell; recalled"
    },
    "filmConductance": {
     "value": 1.6,
     "unit": "um/s",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.4,
     "max": 8,
     "basis": "derived",
     "source": "diffusion of calcium carbonate 0.8e-9 m²/s over a film of still water of 0.5 mm; 0.3 to 1 mm in still water, thinner in the flow of a filter"
    },
    "agedRate": {
     "value": 0.4,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.1,
     "max": 1,
     "basis": "assumed",
     "source": "growth and humus on grains slow them; no measurement in fresh water found, hence the spread"
    },
    "ageingTime": {
     "value": 60,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 15,
     "max": 240,
     "basis": "assumed",
     "source": "films and coatings settle over weeks to months"
    },
    "phosphateHalf": {
     "value": 0.5,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0.05,
     "max": 5,
     "basis": "assumed",
     "source": "phosphate adsorbed on calcite slows it at micromoles per litre; half effect judged at 16 µmol/L"
    },
    "scaleThreshold": {
     "value": 8,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 3,
     "max": 20,
     "basis": "memory",
     "source": "precipitation does not start in practice before a saturation index of 0.3 to 1; recalled"
    },
    "scaleRate": {
     "value": 0.002,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0.0002,
     "max": 0.05,
     "basis": "assumed",
     "source": "hard tap water over sand loses a few degrees in a quarter at most (common practice, no source); scale forms far slower than clean calcite grows"
    }
   }
  },
  "carcass-breakdown": {
   "process": "carcass-breakdown",
   "parameters": {
    "rate": {
     "value": 0.234,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.07,
     "max": 0.6,
     "basis": "memory",
     "source": "bodies below 1 g at 24 °C without scavengers 0.3 (0.15 to 0.6) per day, recalled, brought to 20 °C; with the fall by size a trout of 250 g has 0.036 at 8.6 °C, where 0.049 of it was lost a day, and 0.021 at 4.2 °C, where it was 0.015 (Minshall et al. 1991, abstract); below the thermocline, microbes alone, half was gone in 770 to 1733 h (Chidami & Amyot 2008, abstract), whole lake trout in deep cold water lost 0.0075 a day (Glassic et al. 2023, abstract)"
    },
    "oxidisedShare": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.3,
     "max": 0.9,
     "basis": "assumed",
     "source": "as for feed; no measurement found"
    },
    "coldest": {
     "value": -10,
     "unit": "°C",
     "distribution": "normal",
     "spread": 2,
     "min": -16,
     "max": -4,
     "basis": "page",
     "source": "relative rate of spoilage of fresh fish from temperate waters, (1 + 0.1 T)^2 (Dalgaard 2002, as told in the manual of a program of DTU); -11.8 for pseudomonads on seabream (Koutsoumanis 2001, abstract)"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs in the activated sludge models, Henze et al. 2000; recalled"
    }
   }
  },
  "care": {
   "process": "care",
   "parameters": {
    "portionFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 0.4,
     "max": 2.5,
     "basis": "common practice",
     "source": "A pinch is weighed once and then taken by hand; no source"
    }
   }
  },
  "cation-exchange": {
   "process": "cation-exchange",
   "parameters": {
    "grainRate": {
     "value": 1,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0.1,
     "max": 20,
     "basis": "assumed",
     "source": "grains of a few millimetres come to balance within a day or a few; no measurement on the granules of the trade found"
    },
    "bedVelocity": {
     "value": 3,
     "unit": "cm/d",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0.3,
     "max": 50,
     "basis": "assumed",
     "source": "between bare diffusion into a bed (0.2 cm/d) and water drawn through it by a pump; the trade has active soils lower carbonate hardness within one to three weeks (common practice, no source)"
    },
    "looseFlow": {
     "value": 300,
     "unit": "L/eq/d",
     "distribution": "lognormal",
     "spread": 3,
     "min": 10,
     "max": 5000,
     "basis": "assumed",
     "source": "a peat bag of 300 g in the flow took 114 L from 3.8 to 1 °dKH in two hours (keeper's note, 3000 L/eq/d); ten times less where it lies still"
    },
    "calciumHold": {
     "value": 0.8,
     "unit": "log10",
     "distribution": "normal",
     "spread": 0.15,
     "min": 0.3,
     "max": 1.3,
     "basis": "memory",
     "source": "Appelo & Postma 2005, Gaines-Thomas convention, half reactions over sodium; recalled"
    },
    "magnesiumHold": {
     "value": 0.6,
     "unit": "log10",
     "distribution": "normal",
     "spread": 0.15,
     "min": 0.1,
     "max": 1.1,
     "basis": "memory",
     "source": "Appelo & Postma 2005; peat holds magnesium less than calcium (exchange of alkaline earths in soil organic matter, abstract); recalled"
    },
    "potassiumHold": {
     "value": 0.7,
     "unit": "log10",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0.1,
     "max": 1.3,
     "basis": "memory",
     "source": "Appelo & Postma 2005, Gaines-Thomas convention; recalled"
    },
    "ammoniumHold": {
     "value": 0.6,
     "unit": "log10",
     "distribution": "normal",
     "spread": 0.2,
     "min": 0,
     "max": 1.5,
     "basis": "memory",
     "source": "Appelo & Postma 2005, Gaines-Thomas convention; recalled; zeolites hold it far better"
    }
   }
  },
  "climate": {
   "process": "climate",
   "parameters": {
    "draught": {
     "value": 0.02,
     "unit": "m/s",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.002,
     "max": 0.2,
     "basis": "common practice",
     "source": "0.01 to 0.05 m/s times the open area is added to buoyant exchange in quiet rooms"
    },
    "leakage": {
     "value": 0.1,
     "unit": "1/h",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0,
     "max": 3,
     "basis": "assumed",
     "source": "joints of sliding or hinged glass; one change of air in ten hours"
    },
    "evaporationFactor": {
     "value": 0.9,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.2,
     "min": 0.4,
     "max": 1.6,
     "basis": "assumed",
     "source": "Shah 2014 deviates 18 % on average from measurements; rims of small pools lower evaporation"
    },
    "airResistance": {
     "value": 200,
     "unit": "s/m",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 80,
     "max": 500,
     "basis": "memory",
     "source": "100 to 300 s/m above surfaces in quiet air; recalled"
    },
    "drynessResistance": {
     "value": 200,
     "unit": "s/m",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 30,
     "max": 1500,
     "basis": "assumed",
     "source": "moss 0 s/m wet to 1500 s/m dry (Bond-Lamberty et al. 2010, abstract); 50 to 150 moist and 300 and more drying suggested"
    },
    "landStore": {
     "value": 10,
     "unit": "kg/m2",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 2,
     "max": 60,
     "basis": "assumed",
     "source": "moss at about 6 g water per g dry and the upper 2 to 3 cm of moist soil"
    },
    "wicking": {
     "value": 3,
     "unit": "kg/m2/day",
     "distribution": "lognormal",
     "spread": 2.5,
     "min": 0.05,
     "max": 40,
     "basis": "assumed",
     "source": "fine ground 15 to 30 cm above the water lifts several mm a day; a coarse drainage layer breaks it"
    },
    "innerFilmCoefficient": {
     "value": 3,
     "unit": "W/m2/K",
     "distribution": "lognormal",
     "spread": 1.25,
     "min": 1.5,
     "max": 8,
     "basis": "memory",
     "source": "free convection on upright panes, 1.42 (dT/L)^0.25 (Holman), a few kelvin over half a metre; recalled"
    },
    "outerFilmCoefficient": {
     "value": 7.7,
     "unit": "W/m2/K",
     "distribution": "lognormal",
     "spread": 1.12,
     "min": 5,
     "max": 12,
     "basis": "published",
     "source": "EN 673 indoor convention, convection and radiation"
    },
    "baseConductance": {
     "value": 1.5,
     "unit": "W/m2/K",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.3,
     "max": 5,
     "basis": "assumed",
     "source": "glass on a foam mat and a wooden board"
    },
    "groundCoupling": {
     "value": 5,
     "unit": "W/m2/K",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 1,
     "max": 30,
     "basis": "assumed",
     "source": "moist ground at 0.5 to 1 W/m/K over 10 to 20 cm"
    },
    "lampHeatInside": {
     "value": 0.4,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.1,
     "max": 0.9,
     "basis": "assumed",
     "source": "a white LED sends out about 40 % of its input as light, which ends inside; part of the housing's heat is added above a glass cover"
    },
    "dripLimit": {
     "value": 0.06,
     "unit": "kg/m2",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.01,
     "max": 0.3,
     "basis": "assumed",
     "source": "drops of a millimetre or two cling to upright glass, then run"
    },
    "fogThreshold": {
     "value": 0.001,
     "unit": "kg/m2",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.0001,
     "max": 0.004,
     "basis": "assumed",
     "source": "a film of about a thousandth of a millimetre in fine droplets clouds glass"
    }
   }
  },
  "denitrification": {
   "process": "denitrification",
   "parameters": {
    "arealRate": {
     "value": 180,
     "unit": "mg N/m²/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 40,
     "max": 800,
     "basis": "published",
     "source": "111 µmol N/m2/h (37 mg N/m2/d), mean of littoral lake sediment under aired water (Saunders & Kalff 2001, abstract), taken fivefold since oxygen of 8 mg/L above it leaves a third and 1 mg N/L of nitrate two thirds"
    },
    "theta": {
     "value": 1.113,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.08,
     "max": 1.14,
     "basis": "published",
     "source": "five times the activity at 20 as at 5 degC, lake sediment (Barato Lake, 2011, abstract)"
    },
    "nitrateHalf": {
     "value": 0.48,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.2,
     "max": 1.2,
     "basis": "published",
     "source": "lake sediment (Barato Lake, 2011, abstract)"
    },
    "oxygenInhibition": {
     "value": 4,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 1.5,
     "max": 12,
     "basis": "assumed",
     "source": "oxygen reaches a few millimetres into substrate; the layer without it begins the deeper the more there is above"
    },
    "detritusHalf": {
     "value": 1.5,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.4,
     "max": 6,
     "basis": "assumed",
     "source": "40 g dry/m2: the bed of a fed tank with 10 g/m2 then loses about 12 mg N/m2/d, within the 2 to 60 estimated for thin beds"
    }
   }
  },
  "emersed-plants": {
   "process": "emersed-plants",
   "parameters": {
    "maximumGrowth": {
     "value": 0.07,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.02,
     "max": 0.2,
     "basis": "assumed",
     "source": "gives 0.01 to 0.02 per day under 60 to 150 µmol/m2/s for 11 h at 20 to 24 degC, as slow marsh and house plants grow; no published rate found"
    },
    "growthTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.03,
     "max": 1.1,
     "basis": "assumed",
     "source": "as for floating plants"
    },
    "heatLimit": {
     "value": 36,
     "unit": "°C",
     "distribution": "normal",
     "spread": 2,
     "min": 30,
     "max": 41,
     "basis": "memory",
     "source": "tropical foliage plants suffer above 32 to 35 degC; recalled"
    },
    "lightHalf": {
     "value": 60,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 25,
     "max": 200,
     "basis": "memory",
     "source": "shade plants saturate at 100 to 300 µmol/m2/s; recalled"
    },
    "nitrogenHalf": {
     "value": 0.4,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.1,
     "max": 1.5,
     "basis": "memory",
     "source": "uptake by roots 0.1 to 1.5 mg N/L; recalled"
    },
    "phosphorusHalf": {
     "value": 0.05,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.01,
     "max": 0.2,
     "basis": "memory",
     "source": "uptake by roots 0.01 to 0.2 mg P/L; recalled"
    },
    "preferenceHalf": {
     "value": 0.3,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.1,
     "max": 1,
     "basis": "assumed",
     "source": "as for submerged plants"
    },
    "fullStock": {
     "value": 12,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 5,
     "max": 40,
     "basis": "memory",
     "source": "350 g dry/m2 at 42 % carbon, closed low stands; recalled"
    },
    "respirationRate": {
     "value": 0.003,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.001,
     "max": 0.012,
     "basis": "memory",
     "source": "0.008 to 0.03 per day in actively growing leaves at 25 degC, whole plants with roots and stems less; recalled"
    },
    "lossRate": {
     "value": 0.002,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0007,
     "max": 0.01,
     "basis": "assumed",
     "source": "leaves live more than a year"
    },
    "lossTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.03,
     "max": 1.1,
     "basis": "assumed",
     "source": "as for floating plants"
    }
   }
  },
  "feed-breakdown": {
   "process": "feed-breakdown",
   "parameters": {
    "rate": {
     "value": 0.3,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.12,
     "max": 0.8,
     "basis": "assumed",
     "source": "set so that rate times oxidised share is 0.18 per day, the oxygen uptake of solid feed residue, 8.8 mg O2/g/h at 20 degC (Aquaculture Science 37: 27, 1989, abstract), over 1.2 g O2 per g feed"
    },
    "oxidisedShare": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.3,
     "max": 0.9,
     "basis": "assumed",
     "source": "feed softens faster than it is burnt; no measurement found"
    },
    "theta": {
     "value": 1.088,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.05,
     "max": 1.12,
     "basis": "published",
     "source": "solid feed residue (Aquaculture Science 37: 27, 1989, abstract)"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs in the activated sludge models, Henze et al. 2000; recalled"
    }
   }
  },
  "floating-plants": {
   "process": "floating-plants",
   "parameters": {
    "maximumGrowth": {
     "value": 0.32,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 0.12,
     "max": 0.6,
     "basis": "memory",
     "source": "light-saturated at 20 degC; gives 0.25 per day at 25 degC under 100 µmol/m2/s around the clock, inside the 0.15 to 0.52 of 39 clones of duckweed (Ziegler et al. 2015; recalled); floating ferns grow half as fast"
    },
    "growthTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.03,
     "max": 1.1,
     "basis": "memory",
     "source": "growth of Lemna minor rises to 27.5 degC; Q10 near 1.8; recalled"
    },
    "heatLimit": {
     "value": 34,
     "unit": "°C",
     "distribution": "normal",
     "spread": 1.5,
     "min": 30,
     "max": 37,
     "basis": "published",
     "source": "Salvinia molesta grows best at 30 degC and is severely inhibited at 35 (Mitchell & Tur 1975, abstract)"
    },
    "lightHalf": {
     "value": 50,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 20,
     "max": 150,
     "basis": "memory",
     "source": "growth saturates at 200 to 400 µmol/m2/s and is good in shade; recalled"
    },
    "nitrogenHalf": {
     "value": 0.5,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.1,
     "max": 2,
     "basis": "memory",
     "source": "duckweed 0.1 to 2 mg N/L; recalled"
    },
    "phosphorusHalf": {
     "value": 0.05,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.01,
     "max": 0.3,
     "basis": "memory",
     "source": "duckweed 0.01 to 0.3 mg P/L; recalled"
    },
    "preferenceHalf": {
     "value": 0.3,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.1,
     "max": 1,
     "basis": "assumed",
     "source": "as for submerged plants"
    },
    "fullStock": {
     "value": 6,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.35,
     "min": 3,
     "max": 12,
     "basis": "published",
     "source": "180 g dry/m2 at which crowded duckweed stops growing (Driever et al. 2005, quoted in a handbook), 40 % carbon"
    },
    "respirationRate": {
     "value": 0.015,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.006,
     "max": 0.04,
     "basis": "memory",
     "source": "0.008 to 0.03 per day; recalled"
    },
    "lossRate": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.003,
     "max": 0.05,
     "basis": "assumed",
     "source": "fronds live one to three months"
    },
    "lossTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.03,
     "max": 1.1,
     "basis": "assumed",
     "source": "between plants and algae"
    }
   }
  },
  "gas-exchange": {
   "process": "gas-exchange",
   "about": "Indoors no wind blows over the water; these are among the least certain values of the cycle.",
   "parameters": {
    "stillVelocity": {
     "value": 1,
     "unit": "cm/h",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "0.5 to 2 cm/h by convection alone, judged from the low-wind end of lake studies (Crusius & Wanninkhof 2003, recalled)"
    },
    "stirredVelocity": {
     "value": 6,
     "unit": "cm/h",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 2,
     "max": 15,
     "basis": "assumed",
     "source": "2 to 6 cm/h over a whole surface that a pump moves; higher on the part that it really stirs"
    }
   }
  },
  "grazing": {
   "process": "grazing",
   "about": "Eating is set by the animals; the process has no parameters of its own.",
   "parameters": {}
  },
  "land-breakdown": {
   "process": "land-breakdown",
   "parameters": {
    "litterRate": {
     "value": 0.003,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0006,
     "max": 0.015,
     "basis": "memory",
     "source": "leaves on temperate forest floors lose about half in a year, faster in warm wet boxes (Olson 1963 and later, recalled)"
    },
    "remainsRate": {
     "value": 0.2,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.05,
     "max": 0.7,
     "basis": "common practice",
     "source": "leftovers on wet ground are covered with mould in two to four days"
    },
    "fungiRate": {
     "value": 0.04,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.2,
     "basis": "assumed",
     "source": "mycelium turns over within weeks"
    },
    "soilRate": {
     "value": 0.0005,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.00005,
     "max": 0.004,
     "basis": "memory",
     "source": "the active part of forest soil carbon turns over within years to decades"
    },
    "theta": {
     "value": 1.07,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.015,
     "min": 1.03,
     "max": 1.12,
     "basis": "memory",
     "source": "soil respiration about doubles per 10 K (general literature)"
    },
    "halfWetness": {
     "value": 0.2,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.06,
     "max": 0.6,
     "basis": "assumed",
     "source": "decay stops in dry ground and is near full speed when half wet"
    },
    "fungalYield": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.12,
     "max": 0.5,
     "basis": "memory",
     "source": "carbon use efficiency of soil fungi about 0.2 to 0.4 (general literature)"
    },
    "humified": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.08,
     "max": 0.5,
     "basis": "memory",
     "source": "a fifth to a third of broken-down leaves remains as soil organic matter for longer (general literature)"
    },
    "woodRate": {
     "value": 0.08,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.02,
     "max": 0.3,
     "basis": "common practice",
     "source": "the white bloom on new wood is gone after some two months"
    },
    "mouldTime": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.5,
     "max": 4,
     "basis": "published",
     "source": "Hukka & Viitanen 1999 for pine sapwood; spread judged: bark, heartwood and long soaked wood are slower"
    }
   }
  },
  "land-plants": {
   "process": "land-plants",
   "parameters": {
    "lightHalf": {
     "value": 60,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 25,
     "max": 200,
     "basis": "memory",
     "source": "shade plants saturate at 100 to 300 µmol/m²/s; recalled"
    },
    "growthTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.03,
     "max": 1.1,
     "basis": "assumed",
     "source": "as for floating plants"
    },
    "heatMargin": {
     "value": 6,
     "unit": "K",
     "distribution": "normal",
     "spread": 1.5,
     "min": 2,
     "max": 12,
     "basis": "memory",
     "source": "tropical foliage plants suffer above 32 to 35 °C, recalled; keepers call 28 °C warm for them"
    },
    "usualGrowth": {
     "value": 0.012,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.003,
     "max": 0.05,
     "basis": "memory",
     "source": "0.004 to 0.035 per day in foliage plants, estimated from their kinds"
    },
    "growthFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "spread of the growth stated for each plant, a factor of two either way"
    },
    "respiredShare": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.2,
     "max": 0.9,
     "basis": "memory",
     "source": "as for plants rooted in wet ground: respiration 0.003, leaves shed 0.002 per day"
    },
    "wetHalf": {
     "value": 0.2,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.06,
     "max": 0.6,
     "basis": "assumed",
     "source": "roots draw well until four fifths of the moisture are gone"
    },
    "dryingRate": {
     "value": 0.04,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.01,
     "max": 0.2,
     "basis": "common practice",
     "source": "ferns and soft plants left dry lose their leaves within two to four weeks"
    },
    "attenuation": {
     "value": 0.15,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.06,
     "max": 0.4,
     "basis": "derived",
     "source": "extinction 0.6 per leaf area (Kirk and general literature, recalled) times the leaf area per carbon below"
    },
    "resorbed": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.2,
     "max": 0.8,
     "basis": "memory",
     "source": "about half of nitrogen and phosphorus is withdrawn from dying leaves (Aerts 1996, recalled)"
    },
    "overhang": {
     "value": 0.05,
     "unit": "m",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.01,
     "max": 0.2,
     "basis": "assumed",
     "source": "leaves of a planted bank reach a hand's breadth over the edge"
    },
    "leafArea": {
     "value": 0.25,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.08,
     "max": 0.7,
     "basis": "memory",
     "source": "15 to 25 m²/kg in leaves of shade plants, two thirds of the plant leaves, 42 % carbon; recalled"
    },
    "leafResistance": {
     "value": 900,
     "unit": "s/m",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 200,
     "max": 3000,
     "basis": "derived",
     "source": "15 (5 to 40) g/m²/h at 80 % RH, 22 °C and 50 µmol/m²/s, estimated for shade plants"
    }
   }
  },
  "litter-breakdown": {
   "process": "litter-breakdown",
   "parameters": {
    "breakdownRate": {
     "value": 0.007,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0015,
     "max": 0.03,
     "basis": "memory",
     "source": "oak 0.004 per day at 12 degC (Webster & Benfield 1986, recalled), brought to 20 degC; other leaves by their own pace"
    },
    "breakdownTheta": {
     "value": 1.06,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.03,
     "max": 1.1,
     "basis": "memory",
     "source": "usual for leaf litter in water; recalled"
    },
    "fungalGrowth": {
     "value": 0.25,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.15,
     "max": 0.6,
     "basis": "assumed",
     "source": "alder in a stream was full of fungi after about four weeks (Gessner & Chauvet 1993, abstract), which takes about 0.2 per day from a trace at 10 to 15 °C"
    },
    "fungalDeath": {
     "value": 0.05,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.02,
     "max": 0.1,
     "basis": "assumed",
     "source": "mycelium is renewed within about three weeks"
    },
    "fungalYield": {
     "value": 0.25,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.06,
     "min": 0.1,
     "max": 0.45,
     "basis": "assumed",
     "source": "at least 0.105 g of mycelium per g of leaf lost, fragments included (Gessner & Chauvet 1993, abstract); culture yields reach 0.5"
    },
    "fragments": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.4,
     "max": 3,
     "basis": "assumed",
     "source": "about as much leaf falls to fine particles as is taken up (Suberkropp & Klug 1980 on maceration, abstract, without a number)"
    },
    "nitrogenHalf": {
     "value": 0.05,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.01,
     "max": 0.3,
     "basis": "assumed",
     "source": "breakdown rises with dissolved nitrogen at tens of micrograms per litre"
    },
    "phosphorusHalf": {
     "value": 0.005,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.001,
     "max": 0.03,
     "basis": "assumed",
     "source": "breakdown rises with dissolved phosphorus at micrograms per litre"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs in the activated sludge models, Henze et al. 2000; recalled"
    },
    "acidLoss": {
     "value": 0.55,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.1,
     "max": 0.8,
     "basis": "published",
     "source": "beech in streams of pH 4.7 to 4.9 at most 0.0010, of pH 6.4 to 7.1 at least 0.00175 per day: 0.57 of it (Dangles & Chauvet 2003, abstract)"
    },
    "leachingRate": {
     "value": 1.2,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.5,
     "max": 3,
     "basis": "memory",
     "source": "soluble carbohydrates and phenols mostly lost within two days (Campbell et al., abstract); rate recalled"
    },
    "leachingTheta": {
     "value": 1.04,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1,
     "max": 1.08,
     "basis": "assumed",
     "source": "leaching is mostly diffusion"
    },
    "labileShare": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.25,
     "max": 0.75,
     "basis": "memory",
     "source": "labile share of fresh leaf leachate 0.3 to 0.7; an estimate"
    }
   }
  },
  "mineralisation": {
   "process": "mineralisation",
   "about": "One pool of detritus stands for faeces, feed residue and plant remains.",
   "parameters": {
    "carbonRate": {
     "value": 0.09,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.03,
     "max": 0.25,
     "basis": "published",
     "source": "fish faeces took up 4.2 mg O2/g/h at 20 degC in the first hours (Aquaculture Science 37: 27, 1989, abstract), about 0.1 per day; plant remains are slower, 0.003 to 0.045 per day (Enriquez et al. 1993 and others)"
    },
    "nitrogenRate": {
     "value": 0.09,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.03,
     "max": 0.25,
     "basis": "assumed",
     "source": "nitrogen released as fast as carbon is burnt"
    },
    "phosphorusRate": {
     "value": 0.1,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.03,
     "max": 0.3,
     "basis": "assumed",
     "source": "phosphorus released slightly faster than carbon is burnt"
    },
    "theta": {
     "value": 1.075,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.04,
     "max": 1.11,
     "basis": "published",
     "source": "fish faeces between 10 and 30 degC (Aquaculture Science 37: 27, 1989, abstract)"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs in the activated sludge models, Henze et al. 2000; recalled"
    },
    "shareWithoutOxygen": {
     "value": 0.4,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.1,
     "max": 0.8,
     "basis": "memory",
     "source": "reduction factor of hydrolysis without oxygen in ASM2d, Henze et al. 2000; recalled"
    }
   }
  },
  "moss": {
   "process": "moss",
   "parameters": {
    "lightHalf": {
     "value": 40,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 15,
     "max": 150,
     "basis": "derived",
     "source": "95 % of the highest photosynthesis at 583 µmol/m²/s, median of 39 mosses (Marschall & Proctor 2004), is a half at 31; mats shade themselves: somewhat more"
    },
    "growthTheta": {
     "value": 1.05,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.02,
     "max": 1.09,
     "basis": "memory",
     "source": "mosses of cool woods gain less from warmth than flowering plants; recalled"
    },
    "heatMargin": {
     "value": 3,
     "unit": "K",
     "distribution": "normal",
     "spread": 1,
     "min": 0.5,
     "max": 7,
     "basis": "assumed",
     "source": "growth ends a few degrees above what keepers call warm for it"
    },
    "usualGrowth": {
     "value": 0.008,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.002,
     "max": 0.03,
     "basis": "memory",
     "source": "0.001 to 0.018 per day in forest mosses, estimated from their kinds"
    },
    "growthFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "spread of the growth stated for each moss, a factor of two either way"
    },
    "respiredShare": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.15,
     "max": 0.85,
     "basis": "assumed",
     "source": "half of what a moss must replace is respired, half dies off below"
    },
    "wetHalf": {
     "value": 0.25,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.08,
     "max": 0.7,
     "basis": "assumed",
     "source": "as for decay on land: ground a quarter wet still gives half"
    },
    "dryingRate": {
     "value": 0.015,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.004,
     "max": 0.06,
     "basis": "derived",
     "source": "seven mosses lived six months at most on indoor walls at 60 to 100 % RH (Zechmeister et al. 2023): a tenth left after 150 d of dryness"
    },
    "attenuation": {
     "value": 0.15,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.05,
     "max": 0.4,
     "basis": "assumed",
     "source": "a closed mat of 300 g dry/m² makes half of what the same shoots would make apart"
    },
    "resorbed": {
     "value": 0.5,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.2,
     "max": 0.8,
     "basis": "memory",
     "source": "about half of nitrogen and phosphorus is withdrawn from dying leaves (Aerts 1996, recalled); mosses move it upwards alike"
    },
    "groundReach": {
     "value": 0.7,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.3,
     "max": 0.95,
     "basis": "assumed",
     "source": "wet ground alone keeps the lower part of a mat moist"
    },
    "settlingTime": {
     "value": 30,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 10,
     "max": 80,
     "basis": "common practice",
     "source": "two to eight weeks before fragments show growth"
    }
   }
  },
  "nitrite-oxidation": {
   "process": "nitrite-oxidation",
   "parameters": {
    "maximumGrowth": {
     "value": 0.8,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.35,
     "max": 1.2,
     "basis": "memory",
     "source": "nitrite oxidisers at 20 degC, Henze et al. 2000 and Wiesmann 1994; recalled"
    },
    "activationEnergy": {
     "value": 44,
     "unit": "kJ/mol",
     "distribution": "normal",
     "spread": 4,
     "min": 32,
     "max": 56,
     "basis": "published",
     "source": "Vannecke & Volcke 2015, supporting information; equals a factor of 1.063 per degree"
    },
    "yield": {
     "value": 0.06,
     "unit": "g COD/g N",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.03,
     "max": 0.1,
     "basis": "memory",
     "source": "Wiesmann 1994; recalled"
    },
    "nitrogenHalf": {
     "value": 0.5,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.1,
     "max": 1.5,
     "basis": "memory",
     "source": "Wiesmann 1994; recalled"
    },
    "oxygenHalf": {
     "value": 0.9,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.4,
     "max": 1.5,
     "basis": "memory",
     "source": "Henze et al. 2000 and Wiesmann 1994; recalled"
    },
    "inorganicCarbonHalf": {
     "value": 0.05,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.01,
     "max": 0.3,
     "basis": "assumed",
     "source": "nitrifying films slow down below about 45 mg CaCO3/L of alkalinity (Biesterfeld et al. 2003, recalled), yet work on in soft acid waters: 95 % of the rate there and half at a twentieth of it"
    },
    "phosphateHalf": {
     "value": 0.01,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.002,
     "max": 0.04,
     "basis": "memory",
     "source": "ASM2d, Henze et al. 2000; recalled"
    },
    "acidSide": {
     "value": 5.6,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 4.9,
     "max": 6.5,
     "basis": "assumed",
     "source": "lower than that of ammonia oxidisers, since most of the slowing of nitrite oxidation in acid water is free nitrous acid, which is counted apart"
    },
    "alkalineSide": {
     "value": 9.6,
     "unit": "pH",
     "distribution": "normal",
     "spread": 0.3,
     "min": 9,
     "max": 10.5,
     "basis": "memory",
     "source": "symmetric to the acid side around an optimum near pH 8; recalled"
    },
    "arealCapacity": {
     "value": 0.25,
     "unit": "g N/m²/d",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.07,
     "max": 0.7,
     "basis": "assumed",
     "source": "somewhat above that of ammonia oxidisers, since ripe filters hold nitrite low"
    },
    "decayRate": {
     "value": 0.08,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.03,
     "max": 0.15,
     "basis": "memory",
     "source": "Henze et al. 2000 and Wiesmann 1994; recalled"
    },
    "decayTheta": {
     "value": 1.1,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1.05,
     "max": 1.13,
     "basis": "memory",
     "source": "activated sludge models 2d and 3 in Henze et al. 2000: 0.05 per day at 10 degC and 0.15 at 20 degC make 1.116; older handbooks 1.05; recalled"
    },
    "ammoniaInhibition": {
     "value": 46,
     "unit": "µmol/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 20,
     "max": 100,
     "basis": "published",
     "source": "Park & Bae 2009, abstract"
    },
    "nitrousAcidInhibition": {
     "value": 3.4,
     "unit": "µmol/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 1.7,
     "max": 6.8,
     "basis": "published",
     "source": "Park & Bae 2009, abstract: 1.7 to 6.8; the middle taken"
    }
   }
  },
  "organic-carbon-breakdown": {
   "process": "organic-carbon-breakdown",
   "parameters": {
    "rate": {
     "value": 0.008,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0015,
     "max": 0.04,
     "basis": "memory",
     "source": "stubborn part of leaf and wood leachate 0.003 to 0.01 per day at 25 degC, recalled; pond water alone lost 1 to 7 % in a week (student report, Cape Cod ponds); peat water in the dark at 4 degC had a half-life of 1253 d (2015, abstract)"
    },
    "labileRate": {
     "value": 0.15,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.05,
     "max": 0.5,
     "basis": "memory",
     "source": "labile half of fresh leaf leachate 0.1 to 0.3 per day at 25 degC; recalled"
    },
    "theta": {
     "value": 1.07,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.015,
     "min": 1.03,
     "max": 1.11,
     "basis": "memory",
     "source": "usual range for stubborn organic matter; recalled"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.5,
     "basis": "memory",
     "source": "heterotrophs in the activated sludge models, Henze et al. 2000; recalled"
    }
   }
  },
  "plant-remains": {
   "process": "plant-remains",
   "parameters": {
    "rate": {
     "value": 0.028,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.005,
     "max": 0.1,
     "basis": "published",
     "source": "fresh shoots of Egeria najas lost 0.014 per day at 17 degC and 0.045 at 27 degC along a line (Braz. J. Biol. 65, 2005, abstract): half gone in 36 and 11 days, as first order 0.020 and 0.062; litter bags of older or tougher plants 0.003 to 0.012"
    },
    "theta": {
     "value": 1.124,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.02,
     "min": 1.06,
     "max": 1.16,
     "basis": "published",
     "source": "the same work, 0.014 per day at 17 and 0.045 at 27 degC"
    }
   }
  },
  "shell-building": {
   "process": "shell-building",
   "parameters": {
    "time": {
     "value": 3,
     "unit": "d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 1,
     "max": 10,
     "basis": "assumed",
     "source": "a moult or the edge of a shell hardens within days"
    },
    "calciumHalf": {
     "value": 0.3,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.1,
     "max": 1,
     "basis": "memory",
     "source": "half saturation of calcium uptake by Lymnaea stagnalis (Greenaway 1971, J. Exp. Biol. 54: 199); recalled; amphipods and shrimps are of the same order"
    }
   }
  },
  "start": {
   "process": "start",
   "parameters": {
    "nitrifierFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.05,
     "max": 20,
     "basis": "assumed",
     "source": "How much of a matured filter's life survives the move is rarely known; spread by judgement"
    },
    "algaeFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.05,
     "max": 20,
     "basis": "assumed",
     "source": "Stated by eye; spread by judgement"
    },
    "leachableFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.1,
     "max": 10,
     "basis": "assumed",
     "source": "Pieces of one kind of wood differ by age, bark and soaking; spread by judgement"
    },
    "plantFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "Cover estimated by eye; spread by judgement"
    },
    "exchangerFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.3,
     "max": 3,
     "basis": "assumed",
     "source": "Lots of peat differ from 1.08 to 1.62 meq/g (Rippy & Nelson 2007, abstract); baked soils by brand, moss by stand; spread by judgement"
    },
    "acidHoldFactor": {
     "value": 1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.05,
     "max": 20,
     "basis": "assumed",
     "source": "The hold on hydrogen ions is judged from the acidity that raw materials show; spread by judgement"
    }
   }
  },
  "submerged-plants": {
   "process": "submerged-plants",
   "parameters": {
    "maximumGrowth": {
     "value": 0.22,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.07,
     "max": 0.5,
     "basis": "memory",
     "source": "14 temperate species grew 0.007 to 0.109 per day at 15 degC, 14.4 mol/m2/d and 3.3 to 3.8 mmol/L inorganic carbon (Nielsen & Sand-Jensen 1991, abstract); the middle of the range, 0.04, taken back to full light and carbon and 20 degC"
    },
    "growthTheta": {
     "value": 1.066,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.04,
     "max": 1.1,
     "basis": "assumed",
     "source": "as for algae"
    },
    "heatLimit": {
     "value": 32,
     "unit": "°C",
     "distribution": "normal",
     "spread": 2,
     "min": 27,
     "max": 37,
     "basis": "memory",
     "source": "most do best at 20 to 28 degC and suffer above 30; recalled"
    },
    "lightHalf": {
     "value": 35,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 15,
     "max": 100,
     "basis": "memory",
     "source": "plants kept in enclosures are mostly shade plants; recalled"
    },
    "nitrogenHalf": {
     "value": 0.1,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.02,
     "max": 0.8,
     "basis": "memory",
     "source": "uptake by leaves; by roots about 0.4; recalled"
    },
    "phosphorusHalf": {
     "value": 0.01,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.002,
     "max": 0.1,
     "basis": "memory",
     "source": "uptake by leaves; by roots about 0.05; recalled"
    },
    "carbonHalf": {
     "value": 0.04,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.02,
     "max": 0.15,
     "basis": "memory",
     "source": "half-saturation for carbon dioxide under water, 20 to 150 µmol/L; recalled"
    },
    "bicarbonateAffinity": {
     "value": 0.1,
     "unit": "1",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.02,
     "max": 0.35,
     "basis": "memory",
     "source": "plants that use bicarbonate take it up two to thirty times less readily than carbon dioxide at equal content, mostly about ten times (Sand-Jensen 1983, Maberly & Madsen 1998; recalled)"
    },
    "bicarbonateLight": {
     "value": 80,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 20,
     "max": 200,
     "basis": "published",
     "source": "building and running the uptake costs Elodea nuttallii 69 µmol/m²/s, so that little use is expected below about 80 (Jones 2005, abstract); taken as the light at which half of it is reached"
    },
    "preferenceHalf": {
     "value": 0.3,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.1,
     "max": 1,
     "basis": "memory",
     "source": "gives 0.7 of the nitrogen as ammonium when both stand at 1 mg N/L; recalled"
    },
    "fullStock": {
     "value": 5.2,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 2,
     "max": 12,
     "basis": "memory",
     "source": "150 g dry/m2 at 42 % carbon; stands of 50 to 300 g/m2; recalled"
    },
    "respirationRate": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.004,
     "max": 0.03,
     "basis": "memory",
     "source": "0.008 to 0.03 per day at 25 degC, brought to 20 degC; recalled"
    },
    "lossRate": {
     "value": 0.004,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.0015,
     "max": 0.02,
     "basis": "assumed",
     "source": "leaf loss of healthy plants 0.002 to 0.02 per day"
    },
    "lossTheta": {
     "value": 1.07,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.04,
     "max": 1.1,
     "basis": "memory",
     "source": "plant respiration; recalled"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.6,
     "basis": "assumed",
     "source": "as for bacteria"
    }
   }
  },
  "surface-cover": {
   "process": "surface-cover",
   "parameters": {
    "algalStock": {
     "value": 1.5,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 0.8,
     "max": 2.5,
     "basis": "published",
     "source": "32 to 49 g dry/m2 on bamboo and branches in bright fertile ponds (Anix et al. 2020; Azim et al. 2002, abstracts), 29 to 41 % of it ash, 46 % carbon in the rest (recalled), which is 60 to 80 % of what endless light would carry"
    },
    "stockLight": {
     "value": 80,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 30,
     "max": 250,
     "basis": "assumed",
     "source": "joins the stock of bright ponds with the 2 to 25, mostly 8 g dry/m2 that glass and stone are estimated to carry under 40 to 100 µmol/m2/s"
    },
    "filmStock": {
     "value": 0.015,
     "unit": "mol C/m²",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.003,
     "max": 0.06,
     "basis": "assumed",
     "source": "0.4 g dry/m2 at 48 % carbon; renewed in ten days it makes 3 to 50 mg dry/m2/d, as estimated for dark films of fed tanks"
    }
   }
  },
  "suspended-algae": {
   "process": "suspended-algae",
   "parameters": {
    "maximumGrowth": {
     "value": 2,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.3,
     "min": 1,
     "max": 3.5,
     "basis": "memory",
     "source": "phytoplankton at 20 degC, 1 to 3 per day, Bowie et al. 1985; recalled"
    },
    "growthTheta": {
     "value": 1.066,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.04,
     "max": 1.1,
     "basis": "page",
     "source": "default of QUAL2Kw, read in its public source"
    },
    "heatLimit": {
     "value": 36,
     "unit": "°C",
     "distribution": "normal",
     "spread": 2,
     "min": 31,
     "max": 41,
     "basis": "memory",
     "source": "green algae grow best at 25 to 32 degC; recalled"
    },
    "lightHalf": {
     "value": 80,
     "unit": "µmol/m²/s",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 25,
     "max": 200,
     "basis": "memory",
     "source": "20 to 150 for green algae of lit waters; recalled"
    },
    "nitrogenHalf": {
     "value": 0.015,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.005,
     "max": 0.05,
     "basis": "memory",
     "source": "5 to 50 µg N/L, Bowie et al. 1985; recalled"
    },
    "phosphorusHalf": {
     "value": 0.003,
     "unit": "mg P/L",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.001,
     "max": 0.008,
     "basis": "memory",
     "source": "1 to 8 µg P/L, Bowie et al. 1985; recalled"
    },
    "carbonHalf": {
     "value": 0.013,
     "unit": "mmol/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.004,
     "max": 0.06,
     "basis": "assumed",
     "source": "as for attached algae"
    },
    "preferenceHalf": {
     "value": 0.025,
     "unit": "mg N/L",
     "distribution": "lognormal",
     "spread": 1.8,
     "min": 0.008,
     "max": 0.1,
     "basis": "memory",
     "source": "default of QUAL2K, 25 µg N/L; recalled"
    },
    "respirationRate": {
     "value": 0.1,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.04,
     "max": 0.25,
     "basis": "memory",
     "source": "0.05 to 0.2 per day, Bowie et al. 1985; recalled"
    },
    "lossRate": {
     "value": 0.2,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.7,
     "min": 0.05,
     "max": 0.6,
     "basis": "assumed",
     "source": "death and grazing by rotifers and ciliates, which are not computed; with settling a still tank of 20 cm loses 0.6 per day, so that blooms begin near 6 mol/m2/d. Common practice, no source: green water where more than about 10 mol/m2/d meets phosphate"
    },
    "lossTheta": {
     "value": 1.05,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.01,
     "min": 1.02,
     "max": 1.08,
     "basis": "page",
     "source": "default of QUAL2Kw, read in its public source"
    },
    "oxygenHalf": {
     "value": 0.2,
     "unit": "mg/L",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 0.1,
     "max": 0.6,
     "basis": "assumed",
     "source": "as for bacteria"
    },
    "settlingVelocity": {
     "value": 0.08,
     "unit": "m/d",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.01,
     "max": 0.4,
     "basis": "memory",
     "source": "small green algae 0.02 to 0.3 m per day, diatoms more, flagellates less; recalled from Chapra 1997"
    },
    "washOff": {
     "value": 0.002,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 2,
     "min": 0.0003,
     "max": 0.02,
     "basis": "assumed",
     "source": "a tenth of the loss of attached algae floats off alive; it only starts blooms"
    }
   }
  },
  "underwater-light": {
   "process": "underwater-light",
   "parameters": {
    "backgroundAttenuation": {
     "value": 0.15,
     "unit": "1/m",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.05,
     "max": 0.6,
     "basis": "memory",
     "source": "pure water in white light 0.05 to 0.2; clear lakes more; recalled"
    },
    "colourAttenuation": {
     "value": 0.22,
     "unit": "1/m per mg C/L",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.1,
     "max": 0.4,
     "basis": "memory",
     "source": "Morris et al. 1995, about 0.22 DOC^1.07; recalled"
    },
    "suspendedAttenuation": {
     "value": 4.6,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.5,
     "min": 2,
     "max": 10,
     "basis": "published",
     "source": "0.019 m2 per mg chlorophyll (fit to Lake Donghu, abstract) at 50 g carbon per g chlorophyll (recalled)"
    },
    "plantAttenuation": {
     "value": 0.57,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.28,
     "max": 1.4,
     "basis": "memory",
     "source": "0.02 m2 per g dry (0.01 to 0.05) at 42 % carbon; recalled"
    },
    "floatingAttenuation": {
     "value": 0.9,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.4,
     "min": 0.5,
     "max": 1.6,
     "basis": "memory",
     "source": "a closed sheet of 100 g dry/m2 lets 1 to 15, about 5 % of the light through; estimated"
    },
    "emersedAttenuation": {
     "value": 0.29,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.12,
     "max": 0.7,
     "basis": "memory",
     "source": "0.5 per leaf area, 0.02 m2 leaf per g dry at 42 % carbon; recalled"
    },
    "algalAttenuation": {
     "value": 0.9,
     "unit": "m²/mol C",
     "distribution": "lognormal",
     "spread": 1.9,
     "min": 0.2,
     "max": 4,
     "basis": "memory",
     "source": "0.03 m2 per g dry at 40 % carbon; recalled"
    },
    "incidentShare": {
     "value": 0.6,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.12,
     "min": 0.3,
     "max": 0.9,
     "basis": "assumed",
     "source": "glass stands upright and the undersides of wood and stone lie in shade"
    }
   }
  },
  "water-chemistry": {
   "process": "water-chemistry",
   "parameters": {
    "organicChargeDensity": {
     "value": 10,
     "unit": "ueq/mg C",
     "distribution": "lognormal",
     "spread": 1.25,
     "min": 5,
     "max": 15,
     "basis": "published",
     "source": "Oliver, Thurman & Malcolm 1983 Geochim. Cosmochim. Acta 47:2031, 10 ueq/mg C for aquatic humic matter; other work gives 8 to 13; fresh wood extract is less sure, hence the spread"
    }
   }
  },
  "wood-leaching": {
   "process": "wood-leaching",
   "parameters": {
    "quickRate": {
     "value": 0.15,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.05,
     "max": 0.5,
     "basis": "memory",
     "source": "first weeks under water: 0.05 to 0.5 per day; an estimate, since no measurement on whole branches was found"
    },
    "slowRate": {
     "value": 0.01,
     "unit": "1/d",
     "distribution": "lognormal",
     "spread": 1.6,
     "min": 0.003,
     "max": 0.03,
     "basis": "memory",
     "source": "months after: 0.003 to 0.02 per day; an estimate, since no measurement on whole branches was found"
    },
    "labileShare": {
     "value": 0.3,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.1,
     "min": 0.05,
     "max": 0.6,
     "basis": "assumed",
     "source": "sugars and small acids of fresh wood; half of leaf leachate is of this kind, wood gives relatively more tannin"
    },
    "theta": {
     "value": 1.04,
     "unit": "1",
     "distribution": "normal",
     "spread": 0.012,
     "min": 1,
     "max": 1.08,
     "basis": "assumed",
     "source": "leaching is mostly diffusion, so it rises less with warmth than life does"
    }
   }
  }
 },
 "enclosures": {
  "beck-bank": "# yaml-language-server: $schema=../../../../docs/schema/enclosure.schema.json\nshoreglass: 1\nname: Beck bank\nabout: |\n  An invented enclosure for a cool room: the bank of a small beck, half water, half land. Nobody has\n  built it; every figure in this file is chosen to show what such a file can hold.\nstart: 2026-03-01\n\nglass:                        # inside measures\n  length: 90 cm\n  width: 45 cm\n  height: 60 cm\n  thickness: 8 mm\ncover:\n  open: 3 %                   # a strip of mesh along the back\n  transmission: 90 %\n\nzones:                        # from left to right; layers from the base upwards\n  - id: pool\n    name: Pool\n    kind: pool\n    from: 0 cm\n    to: 44 cm\n    ground: { left: 3 cm, right: 5 cm }\n    layers:\n      - { kind: substrate, material: coarse-sand }\n  - id: margin\n    name: Margin\n    kind: margin\n    from: 44 cm\n    to: 57 cm\n    ground: { left: 5 cm, right: 20 cm }\n    layers:\n      - { kind: substrate, material: fine-gravel }\n  - id: bank\n    name: Bank\n    kind: bank\n    from: 57 cm\n    to: 90 cm\n    ground: { left: 22 cm, right: 31 cm }\n    layers:\n      - { kind: false bottom, material: false-bottom, thickness: 8 cm }\n      - { kind: drainage, material: expanded-clay, thickness: 9 cm }\n      - { kind: mesh, material: screen-mesh, thickness: 1 mm }\n      - { kind: substrate, material: forest-soil }\n\nwater:\n  level: 16.5 cm              # just below the mesh, so that the soil drains\n  fill:                       # half hard tap water, half rain\n    - { water: hard-tap, share: 50 % }\n    - { water: rain, share: 50 % }\n  top-off: rain               # what evaporates leaves its minerals behind\n\nsettled:                      # a sponge from a running tank, otherwise a clean start\n  filter: matured\n  handles: 8 mg\n  algae: 0.05 g/m²\n  detritus: 0.5 g\n\nroom:\n  temperature: { mean: 19 °C, season: 2.5 K, day: 1 K, peak: 07-25 }\n  humidity: { mean: 55 %, season: 6 %, day: -4 %, peak: 08-10 }\n  carbon-dioxide: 600 ppm\n\ndevices:\n  lamps:\n    - name: LED bar\n      power: 28 W\n      lumens: 3100 lm\n      on: 09:00\n      lit: 11 h\n  pump:\n    name: Pump under the false bottom\n    power: 4 W\n    flow: 180 L/h\n    fall: 6 cm                # runs back over the stones of the margin\n    films: 0.3 m²\n\nhardscape:\n  - id: branch\n    name: Alder branch\n    material: alder-wood\n    mass: 420 g\n    course:                   # from the floor of the pool up onto the bank\n      - { x: 14 cm, z: 6 cm, thick: 4 cm }\n      - { x: 36 cm, z: 13 cm, thick: 4 cm }\n      - { x: 55 cm, z: 25 cm, thick: 3 cm }\n      - { x: 72 cm, z: 38 cm, thick: 2 cm }\n  - id: stones\n    name: Slate of the margin\n    material: slate\n    mass: 3.2 kg\n    course:\n      - { x: 46 cm, z: 9 cm, thick: 5 cm }\n      - { x: 55 cm, z: 20 cm, thick: 4 cm }\n  - id: leaves\n    name: Oak leaves on the pool floor\n    material: oak-litter\n    mass: 12 g\n\nplants:\n  - { plant: ceratophyllum-demersum, zone: pool, cover: 15 % }\n  - { plant: hypnum-cupressiforme, zone: bank, cover: 35 % }\n  - { plant: thuidium-tamariscinum, zone: margin, cover: 30 % }\n  - { plant: asplenium-scolopendrium, zone: bank, cover: 15 % }\n\nanimals:\n  - species: hyalella-azteca\n    zone: pool\n    adults: 16\n    juveniles: 20\n    after: 28 d\n  - species: planorbella-duryi\n    zone: pool\n    adults: 6\n    after: 42 d\n  - species: porcellio-scaber\n    zone: bank\n    adults: 15\n    after: 28 d\n  - species: folsomia-candida\n    zone: bank\n    adults: 30\n    after: 14 d\n\nroutines:\n  - { do: feed, feed: shrimp-pellet, amount: 0.12 g, every: 3 d, after: 29 d }\n  - { do: top-off, every: 4 d }\n\nactions:\n  - { do: add-litter, material: oak-litter, mass: 90 g, place: land, after: 7 d }\n  - { do: add-litter, material: oak-litter, mass: 8 g, after: 150 d }\n",
  "espoo-window": "# yaml-language-server: $schema=../../../../docs/schema/enclosure.schema.json\nshoreglass: 1\nname: Espoo window\nabout: |\n  A plan with two real inputs. The water is a published tap-water analysis: Zarnewanz waterworks near\n  Rostock, 7 January 2026 (its charges agree within 1.6 %). The room is a measured living room in\n  Espoo, Finland: temperature and humidity of 21 February to 24 June 2012, every third hour, from the\n  TRH database (CC BY 4.0). The record covers 125 days; a longer run repeats it, so summer heat and\n  autumn damp are missing. The glass and all that is in it are planned, not built.\nstart: 2026-02-21             # the day of the year on which the record of the room begins\n\nglass: { length: 60 cm, width: 40 cm, height: 45 cm, thickness: 6 mm }\ncover: { open: 4 %, transmission: 90 % }\n\nzones:\n  - id: pool\n    name: Pool\n    kind: pool\n    from: 0 cm\n    to: 36 cm\n    ground: { left: 4 cm, right: 6 cm }\n    layers:\n      - { kind: substrate, material: fine-gravel }\n  - id: bank\n    name: Bank\n    kind: bank\n    from: 36 cm\n    to: 60 cm\n    ground: { left: 16 cm, right: 24 cm }\n    layers:\n      - { kind: drainage, material: expanded-clay, thickness: 13 cm }\n      - { kind: mesh, material: screen-mesh, thickness: 1 mm }\n      - { kind: substrate, material: coir }\n\nwater:\n  level: 13 cm\n  fill: rostock-zarnewanz\n  top-off: distilled\n\nsettled:\n  filter: matured             # the sponge of a running tank\n  handles: 6 mg\n  algae: 0.05 g/m²\n  detritus: 0.3 g\n\nroom:\n  series: espoo-living-room\n  carbon-dioxide: 700 ppm\n\ndevices:\n  lamps:\n    - { name: LED panel, power: 18 W, lumens: 2000 lm, on: 10:00, lit: 10 h }\n  pump: { name: Sponge filter, power: 3 W, flow: 80 L/h, films: 0.2 m² }\n\nhardscape:\n  - id: root\n    name: Bog wood\n    material: bog-wood\n    mass: 600 g\n    course:\n      - { x: 10 cm, z: 8 cm, thick: 4 cm }\n      - { x: 40 cm, z: 22 cm, thick: 3 cm }\n  - { id: leaves, name: Beech leaves, material: beech-litter, mass: 4 g }\n\nplants:\n  - { plant: ceratophyllum-demersum, zone: pool, cover: 20 % }\n  - { plant: hypnum-cupressiforme, zone: bank, cover: 40 % }\n\nanimals:\n  - { species: neocaridina-davidi, zone: pool, adults: 12, after: 21 d }\n  - { species: planorbella-duryi, zone: pool, adults: 4, after: 21 d }\n\nroutines:\n  - { do: feed, feed: algae-wafer, amount: 0.06 g, every: 3 d, after: 22 d }\n  - { do: top-off, every: 3 d }\n",
  "fern-island": "# yaml-language-server: $schema=../../../../docs/schema/enclosure.schema.json\nshoreglass: 1\nname: Fern island\nabout: |\n  An invented enclosure drawn in plan: a pool with an island, a bank in the corner that slopes both ways, a\n  wall of foam along the back, a cave under a slab, and a brook that runs down from the pump's outlet. Nobody\n  has built it; every figure in this file is chosen to show what such a file can hold.\nstart: 2026-04-01\n\nglass:\n  length: 120 cm\n  width: 50 cm\n  height: 50 cm\n  thickness: 10 mm\n  top: rimmed\n  vents:                      # a slot low in the front, so that air rises past the pane\n    - name: Front slot\n      pane: front\n      height: 30 cm\n      length: 60 cm\n      opening: 1 cm\n      mesh: { open: 36 %, hole: 0.5 mm }\ncover:\n  open: 3 %\n  transmission: 90 %\n  mesh: { open: 36 %, hole: 0.5 mm }\n  gap: 0.5 mm\n\nzones:\n  - id: pool                  # the whole base; what is drawn later lies on it\n    name: Pool\n    kind: pool\n    from: 0 cm\n    to: 120 cm\n    ground: { front: 3 cm, back: 6 cm }\n    layers:\n      - { kind: substrate, material: coarse-sand }\n  - id: bank\n    name: Corner bank\n    kind: bank\n    outline:                  # seen from above, x from the left pane, y from the front\n      - { x: 78 cm, y: 50 cm, ground: 20 cm }\n      - { x: 84 cm, y: 26 cm, ground: 12 cm }\n      - { x: 100 cm, y: 12 cm, ground: 10 cm }\n      - { x: 120 cm, y: 8 cm, ground: 12 cm }\n      - { x: 120 cm, y: 50 cm, ground: 30 cm }\n    layers:\n      - { kind: drainage, material: expanded-clay, thickness: 14 cm }\n      - { kind: mesh, material: screen-mesh, thickness: 1 mm }\n      - { kind: substrate, material: forest-soil }\n  - id: isle\n    name: Isle\n    kind: island\n    outline:\n      - { x: 26 cm, y: 14 cm }\n      - { x: 44 cm, y: 12 cm }\n      - { x: 50 cm, y: 24 cm }\n      - { x: 40 cm, y: 33 cm }\n      - { x: 27 cm, y: 28 cm }\n    ground: { left: 17 cm, right: 22 cm }\n    layers:\n      - { kind: drainage, material: lava-gravel, thickness: 16 cm }\n      - { kind: substrate, material: forest-soil }\n  - id: den\n    name: Den\n    kind: cave\n    outline:\n      - { x: 56 cm, y: 30 cm }\n      - { x: 72 cm, y: 30 cm }\n      - { x: 72 cm, y: 44 cm }\n      - { x: 56 cm, y: 44 cm }\n    ground: { front: 5 cm, back: 6 cm }\n    roof: { bottom: 12 cm, top: 15 cm }\n    layers:\n      - { kind: substrate, material: coarse-sand }\n  - id: backdrop\n    name: Backdrop\n    kind: wall\n    outline:\n      - { x: 0 cm, y: 45 cm }\n      - { x: 120 cm, y: 45 cm }\n      - { x: 120 cm, y: 50 cm }\n      - { x: 0 cm, y: 50 cm }\n    ground: { front: 44 cm }\n    layers:\n      - { kind: foam, material: expanding-foam }\n\nwater:\n  level: 14 cm\n  fill:\n    - { water: hard-tap, share: 50 % }\n    - { water: rain, share: 50 % }\n  top-off: rain\n\nsettled: { filter: matured, handles: 10 mg, algae: 0.05 g/m², detritus: 0.5 g }\n\nroom:\n  temperature: { mean: 20 °C, season: 2 K, day: 1 K, peak: 07-25 }\n  humidity: { mean: 52 %, season: 6 %, day: -4 %, peak: 08-10 }\n\ndevices:\n  lamps:\n    - name: Left bar\n      power: 30 W\n      lumens: 3600 lm\n      on: 09:00\n      lit: 11 h\n      dim: 80 %\n      panel: { x: 35 cm, y: 24 cm, z: 54 cm, length: 50 cm, breadth: 6 cm }\n      protection: IP65\n    - name: Right bar\n      power: 30 W\n      lumens: 3600 lm\n      on: 09:30\n      lit: 11 h\n      panel: { x: 88 cm, y: 24 cm, z: 54 cm, length: 50 cm, breadth: 6 cm }\n      protection: IP65\n  pump:\n    name: Pump behind the backdrop\n    power: 6 W\n    curve: { head: 90 cm, flow: 420 L/h }\n    outlet: 34 cm\n    hose: { length: 60 cm, bore: 13 mm, elbows: 2, valves: 1 }\n    filter: { kind: foam, area: 90 cm², thickness: 5 cm, pores: 20 }\n    fall: 12 cm\n    lip: 5 cm\n    films: 0.4 m²\n  fans:\n    - { name: Cover fan, power: 1 W, flow: 3 m³/h, moves: room, above: 93 % }\n  mister: { amount: 120 mL, at: [08:30, 20:30] }\n\nhardscape:\n  - id: root\n    name: Root from the pool to the isle\n    material: bog-wood\n    mass: 1.1 kg\n    course:\n      - { x: 10 cm, z: 8 cm, thick: 5 cm, y: 30 cm }\n      - { x: 24 cm, z: 15 cm, thick: 5 cm, y: 26 cm }\n      - { x: 38 cm, z: 24 cm, thick: 3 cm, y: 22 cm }\n  - id: leaves\n    name: Oak leaves on the pool floor\n    material: oak-litter\n    mass: 10 g\n\nplants:\n  - { plant: ceratophyllum-demersum, zone: pool, cover: 12 % }\n  - { plant: hypnum-cupressiforme, zone: isle, cover: 40 % }\n  - { plant: asplenium-scolopendrium, zone: bank, cover: 20 % }\n  - { plant: thuidium-tamariscinum, zone: bank, cover: 30 % }\n\nanimals:\n  - { species: hyalella-azteca, zone: pool, adults: 16, juveniles: 20, after: 28 d }\n  - { species: porcellio-scaber, zone: bank, adults: 15, after: 28 d }\n\nroutines:\n  - { do: feed, feed: shrimp-pellet, amount: 0.12 g, every: 3 d, after: 29 d }\n  - { do: top-off, every: 4 d }\n"
 },
 "series": {
  "espoo-living-room": "# name: A living room in Espoo, Finland, February to June 2012\n# source: TRH database (github.com/anssilaukkarinen/trh-1), house R2, indoor2.csv: hourly readings of a Comark N2013 logger in the ordinary living rooms of a one-storey house built in 2010; every third reading is taken over, 21 February to 24 June 2012, clock UTC+2\n# licence: CC BY 4.0 (attribution: TRH database)\n# changes: every third hour kept, one decimal; nothing else\n# start: 2012-02-21 00:00\n# step: 3 h\ntemperature [°C],humidity [%]\n21.9,34.9\n21.8,34.8\n21.7,34.5\n21.5,34.9\n21.2,34.8\n21.2,35.4\n21.1,35.0\n21.1,35.8\n21.7,33.9\n21.9,33.6\n21.7,33.6\n21.9,33.7\n21.7,33.9\n21.5,34.3\n21.2,34.9\n21.4,37.3\n21.4,37.2\n21.4,36.1\n21.2,35.9\n21.1,36.1\n21.2,36.9\n21.4,37.3\n21.2,35.8\n21.1,38.3\n21.2,38.6\n22.2,43.3\n22.2,38.7\n22.4,38.5\n22.4,35.9\n22.4,35.9\n21.9,34.4\n22.0,36.0\n22.1,36.3\n22.1,36.0\n21.9,35.5\n21.7,35.6\n21.7,37.1\n21.9,37.9\n21.6,38.2\n21.6,37.9\n21.9,36.5\n22.2,36.1\n22.0,35.3\n21.9,35.4\n21.6,35.6\n22.3,40.4\n22.5,40.0\n22.1,38.8\n22.2,38.2\n22.1,37.2\n21.8,36.8\n21.5,38.9\n21.4,37.4\n21.4,37.0\n21.2,36.1\n21.1,35.9\n21.6,35.6\n21.6,35.5\n21.4,35.6\n21.2,35.4\n21.2,36.9\n21.2,36.9\n21.2,37.4\n21.5,38.6\n21.7,36.3\n21.9,35.9\n21.8,35.4\n21.9,35.4\n21.9,35.0\n21.7,34.8\n21.6,34.4\n21.5,36.7\n21.4,36.3\n21.1,36.2\n21.1,36.7\n21.3,36.7\n21.5,37.1\n21.7,38.3\n21.7,37.4\n21.6,36.8\n21.6,38.6\n21.9,42.4\n21.6,37.0\n21.4,36.8\n21.2,36.4\n21.1,36.3\n21.0,35.7\n21.0,35.0\n21.2,34.7\n21.3,34.3\n21.1,33.8\n21.1,33.5\n21.5,36.5\n21.9,34.3\n22.2,32.2\n21.9,33.9\n22.0,34.0\n21.9,34.1\n21.8,33.8\n21.6,34.6\n21.8,33.1\n22.0,33.5\n22.4,31.6\n21.8,33.2\n21.8,33.2\n21.7,33.7\n21.5,34.3\n21.3,37.2\n21.2,35.6\n21.3,34.5\n21.3,33.2\n21.1,33.3\n21.0,34.1\n21.1,34.5\n21.2,34.7\n21.1,34.7\n21.2,34.5\n21.4,33.9\n21.5,32.6\n21.4,32.4\n21.8,32.5\n21.9,32.9\n21.7,32.8\n21.5,34.9\n21.9,33.8\n22.5,31.8\n22.8,31.7\n21.9,31.9\n21.6,32.4\n21.2,32.7\n21.0,33.4\n21.4,34.6\n22.1,33.6\n22.9,33.5\n23.1,31.5\n22.9,32.7\n22.7,33.3\n22.6,33.2\n22.4,32.9\n22.5,34.6\n22.8,33.4\n22.9,33.2\n22.5,31.8\n22.2,32.8\n22.3,33.2\n22.2,33.5\n22.1,33.3\n22.1,34.7\n22.4,36.3\n22.6,36.4\n22.5,37.0\n22.6,40.2\n22.2,36.0\n21.9,35.5\n21.5,35.5\n21.5,35.8\n21.5,38.9\n22.2,35.2\n22.6,33.9\n22.2,35.1\n21.9,38.1\n21.7,35.7\n21.4,35.2\n21.3,34.9\n21.3,35.1\n21.3,34.5\n21.2,33.7\n21.2,33.7\n21.4,32.9\n21.4,32.9\n21.2,33.3\n21.5,34.3\n22.1,32.8\n22.5,33.2\n22.7,31.2\n22.3,30.6\n21.7,31.2\n21.4,31.5\n21.2,31.8\n21.1,31.4\n21.3,32.0\n21.7,32.0\n22.7,29.4\n22.0,30.5\n22.0,32.0\n22.7,34.8\n22.2,33.2\n22.1,33.8\n22.1,30.4\n22.5,30.1\n21.9,29.3\n21.9,31.4\n22.1,31.1\n22.2,32.2\n22.0,32.2\n22.2,34.3\n22.5,33.6\n22.6,32.6\n22.5,33.6\n22.4,33.7\n22.1,33.5\n22.1,33.2\n21.8,33.1\n21.6,33.5\n21.5,37.2\n21.7,35.3\n21.5,36.0\n21.5,35.3\n21.9,36.8\n21.9,36.2\n21.7,36.0\n21.5,35.8\n21.6,35.9\n21.8,36.2\n21.6,35.6\n21.6,35.7\n21.9,35.3\n21.9,35.2\n21.7,35.1\n21.6,35.5\n21.5,38.9\n21.3,37.0\n21.2,37.2\n21.4,36.6\n22.0,35.7\n22.0,35.3\n21.8,34.6\n21.6,34.8\n21.6,35.1\n21.9,34.7\n21.6,33.9\n21.6,32.6\n21.4,31.2\n21.3,30.6\n21.0,30.6\n21.4,32.5\n22.1,32.4\n23.0,31.8\n23.5,30.8\n23.1,30.8\n22.6,31.0\n22.2,31.1\n21.9,31.8\n22.1,35.7\n22.6,33.2\n22.8,34.2\n22.8,33.7\n22.4,33.6\n22.4,34.5\n22.2,34.3\n22.0,34.2\n22.1,34.6\n22.2,36.0\n22.4,35.6\n22.8,33.9\n22.7,33.2\n22.7,32.8\n22.4,33.1\n22.0,34.2\n21.7,33.5\n21.8,36.8\n21.8,37.1\n21.8,36.8\n21.9,37.3\n22.3,37.1\n22.2,36.2\n21.9,36.3\n21.9,35.9\n22.0,38.5\n22.1,37.5\n22.0,35.7\n22.1,36.7\n22.2,35.9\n22.0,35.3\n21.7,36.7\n21.4,35.4\n21.5,35.5\n21.8,35.5\n21.8,34.5\n21.9,34.5\n22.0,34.3\n22.0,34.7\n21.9,35.1\n22.2,36.1\n22.5,35.9\n22.8,35.4\n22.6,33.7\n22.1,35.6\n22.2,34.6\n22.0,34.4\n21.9,35.2\n22.2,35.5\n22.6,34.5\n22.9,35.2\n22.7,33.5\n22.4,35.8\n22.6,35.7\n22.5,35.3\n22.2,36.3\n22.3,35.8\n22.4,35.6\n22.7,35.9\n22.5,34.3\n22.3,34.1\n22.1,34.9\n21.8,34.9\n21.6,36.5\n21.9,36.2\n22.4,34.8\n22.9,34.9\n22.9,33.1\n22.5,33.4\n22.3,33.6\n22.0,33.5\n21.7,37.4\n21.9,35.0\n22.6,35.0\n22.6,31.9\n22.5,30.9\n22.4,30.9\n22.4,31.9\n22.0,32.1\n21.7,33.3\n21.4,32.6\n21.4,31.4\n21.8,33.4\n22.0,33.6\n21.7,33.6\n21.5,33.8\n21.4,33.6\n21.2,34.7\n21.1,34.4\n21.1,35.3\n21.6,40.4\n22.0,37.6\n22.3,36.4\n22.3,36.0\n22.2,35.3\n22.0,39.3\n21.8,36.5\n21.7,35.9\n21.8,35.6\n22.0,33.3\n22.4,33.6\n22.8,33.2\n22.7,33.5\n22.4,33.8\n22.4,33.2\n23.0,33.1\n23.6,31.6\n23.6,29.6\n23.2,30.7\n22.8,31.0\n22.5,31.3\n22.0,32.7\n22.3,32.8\n22.8,33.1\n23.4,32.8\n23.4,31.2\n23.0,33.7\n22.7,32.1\n22.5,32.7\n22.1,36.3\n21.9,34.6\n21.6,34.3\n21.5,34.3\n21.4,34.3\n21.3,34.1\n21.2,34.1\n21.2,33.4\n21.1,33.2\n21.1,33.4\n21.3,33.9\n21.5,33.3\n21.4,32.6\n21.2,32.2\n21.0,32.2\n20.9,32.2\n20.9,31.7\n20.9,31.6\n21.0,31.5\n21.4,31.0\n22.9,29.0\n22.0,28.8\n21.4,29.3\n21.0,29.8\n21.0,30.4\n21.2,31.2\n21.5,32.4\n22.0,32.4\n23.5,30.5\n22.8,31.6\n22.5,30.7\n22.1,30.3\n21.6,30.8\n21.3,31.8\n21.3,31.9\n21.6,31.5\n22.0,29.8\n22.2,30.9\n22.3,29.7\n22.0,29.3\n21.9,30.5\n22.2,30.3\n22.7,29.6\n22.9,29.1\n22.6,30.5\n22.3,30.1\n21.9,30.4\n21.5,30.9\n21.3,32.2\n21.9,32.7\n22.3,32.8\n22.9,32.2\n23.2,31.3\n23.0,32.7\n22.9,32.9\n22.7,33.1\n22.5,35.5\n22.9,33.8\n23.1,34.2\n23.3,34.0\n22.8,33.5\n22.8,34.8\n22.3,36.0\n22.0,35.0\n21.6,36.1\n21.9,35.2\n21.8,38.8\n22.2,39.3\n21.9,37.7\n22.2,39.8\n22.6,40.2\n22.2,36.4\n21.8,35.2\n21.5,34.2\n21.5,35.5\n21.6,35.0\n22.5,32.5\n22.5,34.1\n22.4,34.3\n22.1,34.3\n21.8,37.4\n21.5,35.2\n21.4,35.4\n21.4,35.3\n21.4,34.5\n21.5,33.9\n21.3,35.0\n21.2,35.0\n21.2,36.0\n21.2,36.3\n21.4,37.5\n21.6,37.5\n22.1,38.8\n22.6,36.4\n22.6,35.4\n22.3,35.3\n22.1,35.7\n22.6,34.9\n22.6,33.5\n23.1,34.2\n23.0,33.6\n22.6,33.9\n22.6,35.6\n23.6,37.4\n23.1,37.5\n23.1,36.0\n23.3,34.5\n23.6,34.0\n23.6,32.8\n23.0,31.7\n22.2,32.7\n21.7,33.4\n21.5,33.4\n22.0,34.4\n22.3,35.0\n22.3,34.3\n22.1,34.7\n21.7,36.1\n21.8,36.3\n21.8,36.7\n21.7,37.5\n21.6,36.9\n21.6,36.4\n21.7,36.2\n22.6,35.1\n22.5,35.6\n22.3,35.1\n22.0,34.9\n21.7,37.8\n21.8,36.7\n22.3,39.9\n22.7,35.2\n24.5,33.4\n24.2,34.1\n23.6,34.6\n23.0,34.5\n22.4,34.8\n22.0,35.3\n22.0,38.0\n22.9,41.5\n22.9,39.9\n22.8,41.1\n22.6,40.5\n22.2,38.8\n21.8,39.1\n21.5,38.7\n21.3,40.0\n21.4,40.8\n21.5,40.7\n21.8,39.8\n21.8,39.1\n21.7,38.7\n21.5,38.8\n22.0,38.0\n22.8,38.7\n23.5,35.9\n23.9,36.5\n23.8,40.0\n23.2,37.1\n22.7,38.1\n22.4,38.9\n22.8,38.4\n22.9,38.3\n22.9,39.1\n23.3,37.8\n22.7,38.9\n22.2,39.3\n21.7,39.2\n21.7,40.4\n22.4,39.9\n22.8,39.5\n23.3,40.2\n24.3,38.2\n24.0,39.7\n23.1,38.4\n22.6,39.3\n22.0,40.3\n21.7,39.0\n21.5,41.2\n21.8,39.7\n23.0,38.7\n22.3,38.2\n21.7,38.1\n21.3,39.1\n21.3,39.4\n21.4,39.0\n21.6,38.4\n22.1,36.6\n23.3,35.4\n22.8,35.3\n22.3,35.0\n21.7,35.2\n21.3,35.6\n21.3,35.9\n21.5,36.4\n22.0,35.7\n24.3,33.3\n23.5,33.5\n22.8,33.6\n22.2,33.4\n21.7,33.8\n21.4,34.2\n21.4,34.0\n21.7,32.2\n24.1,30.1\n23.5,31.5\n22.8,31.7\n22.0,31.8\n21.5,34.2\n21.3,35.0\n21.3,35.1\n21.6,35.7\n23.2,33.2\n23.0,33.4\n22.6,35.1\n22.8,37.7\n22.3,36.4\n22.6,34.4\n22.7,32.5\n23.0,32.1\n23.9,30.6\n23.9,30.3\n22.8,31.0\n22.2,31.9\n21.7,32.5\n22.4,33.1\n22.8,32.2\n23.3,32.6\n23.7,30.9\n23.2,30.6\n22.5,33.1\n22.0,33.6\n21.6,36.1\n21.5,36.1\n21.6,38.2\n22.0,38.9\n23.9,36.3\n23.5,35.7\n22.7,35.5\n22.2,36.3\n21.8,36.7\n21.7,36.4\n21.8,38.0\n21.8,36.4\n21.8,36.3\n22.1,37.7\n22.1,38.3\n22.1,38.1\n21.9,38.8\n21.8,39.8\n21.9,37.6\n22.1,35.9\n23.2,34.4\n23.0,33.9\n22.7,34.0\n22.0,33.5\n21.6,34.6\n21.4,34.4\n21.4,34.2\n21.7,33.5\n22.9,31.7\n23.7,31.6\n22.9,32.3\n22.1,33.0\n21.5,34.6\n22.1,35.0\n22.5,35.3\n23.3,35.1\n24.4,33.6\n24.4,34.8\n23.7,35.1\n23.2,35.0\n22.6,36.6\n23.1,37.6\n23.2,38.0\n23.7,39.1\n24.2,39.0\n24.0,39.6\n23.5,40.4\n23.1,40.5\n22.8,44.3\n23.2,43.6\n23.2,42.8\n23.5,43.2\n22.8,43.0\n22.3,42.2\n21.9,42.0\n21.5,42.4\n21.4,42.6\n21.3,42.1\n21.2,41.6\n21.1,41.4\n21.2,40.9\n21.4,39.4\n21.3,38.9\n21.2,38.7\n21.0,38.6\n21.0,37.7\n21.0,37.0\n21.5,37.8\n23.3,34.3\n23.3,37.3\n22.8,37.0\n22.1,36.5\n21.6,37.7\n21.3,37.3\n21.3,38.0\n21.4,38.3\n23.2,37.2\n23.5,35.8\n22.7,36.4\n21.9,36.4\n21.5,38.0\n21.3,38.4\n21.4,38.6\n21.8,38.1\n23.3,36.2\n24.0,35.5\n23.2,36.2\n22.8,36.4\n22.1,37.0\n22.6,37.7\n23.1,38.2\n23.7,36.7\n23.6,36.5\n23.2,37.8\n23.1,39.5\n22.9,39.5\n22.5,42.3\n22.4,42.7\n22.5,44.8\n22.9,47.0\n23.1,45.7\n22.8,46.0\n24.0,42.2\n24.6,39.8\n23.1,40.1\n22.9,41.4\n22.9,40.7\n23.1,40.9\n23.3,39.4\n23.2,38.6\n22.4,42.0\n23.8,40.7\n22.6,41.3\n22.3,43.3\n22.2,42.2\n22.5,43.3\n23.6,40.3\n24.0,39.5\n23.2,40.4\n22.6,40.5\n22.1,41.7\n22.2,42.7\n22.3,42.5\n22.6,41.3\n23.8,40.2\n23.9,39.4\n25.0,38.6\n23.8,38.9\n23.0,40.6\n22.6,41.5\n22.6,42.8\n23.1,42.3\n24.6,41.0\n24.8,41.0\n25.4,40.2\n24.6,40.4\n23.8,41.4\n23.4,42.8\n23.2,42.7\n23.5,44.0\n24.7,41.6\n24.9,39.9\n25.0,39.1\n24.2,38.9\n23.4,39.0\n23.5,39.7\n23.8,38.3\n24.2,38.0\n24.9,36.4\n24.8,36.3\n23.9,36.5\n23.7,36.9\n22.8,37.8\n23.1,37.6\n23.3,36.1\n23.8,35.8\n24.3,35.0\n24.1,36.3\n23.3,36.3\n23.0,37.5\n22.3,39.0\n22.8,39.3\n23.3,40.0\n23.9,40.0\n23.9,39.2\n23.7,39.1\n24.7,38.6\n24.4,38.4\n23.4,39.9\n22.9,42.6\n22.8,40.1\n23.1,39.2\n24.5,38.2\n24.8,37.3\n24.0,38.6\n23.5,38.6\n23.0,39.1\n22.6,40.6\n22.6,39.0\n23.0,39.2\n24.1,38.9\n24.6,38.4\n24.2,39.7\n23.7,39.3\n23.2,41.4\n22.8,39.4\n22.8,41.3\n23.0,41.8\n22.8,41.5\n22.5,43.7\n23.6,40.2\n22.6,40.0\n21.9,41.8\n21.6,42.3\n21.5,40.8\n21.7,39.5\n22.0,37.3\n22.5,37.0\n22.6,37.5\n21.8,38.3\n21.5,40.1\n22.3,39.8\n22.9,39.2\n23.3,39.3\n23.4,39.4\n23.1,38.9\n22.7,38.5\n22.1,38.4\n21.8,39.2\n22.1,36.6\n22.6,36.0\n23.0,35.6\n22.9,34.9\n22.7,35.4\n24.0,40.5\n23.5,38.5\n22.5,39.1\n22.6,40.4\n22.9,39.6\n23.4,39.0\n22.9,40.0\n22.6,40.9\n22.1,40.8\n21.7,41.9\n21.6,43.0\n21.6,44.0\n21.6,45.7\n21.6,43.7\n22.1,42.2\n22.0,40.9\n21.7,41.1\n21.4,40.9\n21.4,42.2\n21.6,45.2\n21.8,44.6\n21.7,43.4\n21.7,41.1\n21.6,41.8\n21.5,42.3\n21.3,41.9\n21.3,42.6\n21.3,41.8\n21.5,42.5\n21.9,41.9\n23.3,40.1\n23.3,40.1\n22.8,40.5\n22.3,40.3\n21.9,41.2\n21.7,41.7\n21.7,42.2\n21.9,41.6\n22.5,41.5\n22.7,43.3\n22.6,41.3\n22.2,42.3\n21.9,43.8\n22.6,42.0\n23.0,41.0\n22.8,41.9\n23.4,42.4\n23.1,41.9\n22.7,41.9\n22.2,42.0\n21.8,43.8\n22.4,43.2\n22.8,43.3\n23.7,42.7\n24.1,40.3\n24.2,40.8\n23.4,42.5\n23.0,42.1\n22.4,42.9\n22.9,43.5\n23.4,42.3\n23.9,39.1\n25.0,38.1\n24.9,38.4\n24.2,43.9\n23.7,40.2\n23.2,41.2\n22.8,41.3\n22.6,43.4\n22.5,46.2\n22.3,46.2\n22.1,46.3\n22.0,46.0\n22.0,44.8\n21.6,44.8\n21.5,47.2\n22.1,49.3\n22.3,47.1\n23.6,45.1\n24.1,45.0\n23.3,43.5\n22.8,42.1\n22.4,45.6\n22.2,46.1\n22.3,45.1\n22.1,44.4\n22.3,45.7\n22.6,46.1\n22.8,48.2\n22.7,46.1\n22.3,47.5\n22.1,47.2\n22.2,46.6\n22.5,46.5\n22.7,48.2\n23.2,48.2\n22.8,47.9\n22.5,47.7\n22.3,49.2\n22.9,47.5\n23.5,46.6\n24.2,45.7\n24.5,43.6\n24.4,44.6\n23.8,45.4\n23.4,45.5\n23.0,48.3\n23.5,47.1\n23.9,46.5\n24.4,42.7\n25.1,41.4\n25.1,42.7\n24.5,47.1\n24.0,42.6\n23.5,42.7\n23.1,42.0\n23.1,42.7\n23.5,41.5\n24.9,40.9\n25.3,40.9\n24.7,42.4\n24.1,42.6\n23.6,43.5\n23.4,44.9\n23.7,46.4\n24.2,42.7\n24.6,42.2\n24.5,43.6\n24.5,43.5\n25.4,42.1\n24.1,43.7\n23.6,46.3\n23.6,48.0\n23.6,49.5\n24.0,48.6\n23.5,49.5\n23.2,49.7\n22.9,49.0\n22.7,51.1\n22.6,50.9\n22.8,52.6\n23.4,49.8\n24.2,48.8\n24.6,46.9\n24.0,48.0\n23.6,46.8\n23.1,47.4\n22.8,47.6\n22.6,48.1\n22.6,50.7\n22.6,50.8\n23.0,49.7\n22.6,48.8\n22.6,47.7\n22.1,47.9\n22.7,46.2\n23.3,44.4\n23.9,44.5\n24.6,41.5\n24.9,41.3\n24.3,41.0\n23.9,48.4\n23.4,46.5\n23.7,45.0\n24.1,44.1\n24.7,42.3\n25.7,41.7\n25.8,33.3\n25.4,39.1\n24.6,39.9\n24.2,42.6\n23.6,42.2\n23.4,41.7\n23.5,40.2\n24.7,40.6\n25.0,39.8\n24.3,40.2\n23.7,41.1\n23.2,41.7\n22.9,41.7\n22.7,41.3\n22.6,43.6\n22.5,45.0\n22.4,45.2\n22.2,46.0\n22.0,46.6\n21.9,46.8\n21.7,47.7\n21.7,48.4\n21.7,48.0\n21.9,47.4\n22.1,47.3\n"
 }
};
