package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;

/** The sources by their names in the file. */
final class Sources {

  private static final SourceTable TABLE = SourceTable.read("sources.csv", "place");

  static final Source MOMENTUM_THEORY = TABLE.source("momentum-theory");
  static final Source LEISHMAN = TABLE.source("leishman");
  static final Source YOUNG = TABLE.source("young");
  static final Source JOHNSON_RING = TABLE.source("johnson-ring");
  static final Source WOLKOVITCH = TABLE.source("wolkovitch");
  static final Source BASSET = TABLE.source("basset");
  static final Source STEWART = TABLE.source("stewart");
  static final Source HANDBOOK = TABLE.source("handbook");
  static final Source ARMY = TABLE.source("army");
  static final Source TRADE_PRESS = TABLE.source("trade-press");
  static final Source INSTRUCTORS = TABLE.source("instructors");
  static final Source CASTLES_GRAY = TABLE.source("castles-gray");
  static final Source SMALL_ROTORS = TABLE.source("small-rotors");
  static final Source AUTOROTATION_GUIDE = TABLE.source("autorotation-guide");
  static final Source UTILITY_MANUAL = TABLE.source("utility-manual");
  static final Source PROUTY = TABLE.source("prouty");
  static final Source COOKE_FITZPATRICK = TABLE.source("cooke-fitzpatrick");
  static final Source VERTICAL_HANDLING = TABLE.source("vertical-handling");
  static final Source SHORT_PERIOD = TABLE.source("short-period");
  static final Source CUSHION = TABLE.source("cushion");
  static final Source GROUND_STUDY = TABLE.source("ground-study");
  static final Source PADFIELD = TABLE.source("padfield");
  static final Source CARPENTER = TABLE.source("carpenter");
  static final Source PITT_PETERS = TABLE.source("pitt-peters");
  static final Source LAMB = TABLE.source("lamb");
  static final Source CHEESEMAN = TABLE.source("cheeseman");
  static final Source HAYDEN = TABLE.source("hayden");
  static final Source GAGG_FERRAR = TABLE.source("gagg-ferrar");
  static final Source ATMOSPHERE = TABLE.source("atmosphere");
  static final Source GESSOW_MYERS = TABLE.source("gessow-myers");
  static final Source BAILEY = TABLE.source("bailey");
  static final Source HAIRER = TABLE.source("hairer");
  static final Source MECHANICS = TABLE.source("mechanics");
  static final Source LAGUERRE = TABLE.source("laguerre");
  static final Source EJML = TABLE.source("ejml");
  static final Source QUADRATURE = TABLE.source("quadrature");
  static final Source DIFFERENCES = TABLE.source("differences");
  static final Source EXTRAPOLATION = TABLE.source("extrapolation");
  static final Source OWN_FORMULATION = TABLE.source("own-formulation");
  static final Source REQUIREMENT = TABLE.source("requirement");

  private Sources() {}
}
