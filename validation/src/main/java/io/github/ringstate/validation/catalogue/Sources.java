package io.github.ringstate.validation.catalogue;

import io.github.ringstate.validation.check.Source;

/** The works that the catalogue cites. */
final class Sources {

  static final Source MOMENTUM_THEORY =
      new Source(
          "W. Johnson",
          "Helicopter Theory",
          "Princeton University Press",
          "1980",
          "chapter 3 (Rankine, Froude, Glauert; in any rotorcraft textbook)");
  static final Source LEISHMAN =
      new Source(
          "J. G. Leishman",
          "Principles of Helicopter Aerodynamics",
          "2nd edition",
          "2006",
          "chapter 2");
  static final Source YOUNG =
      new Source(
          "C. Young",
          "A note on the velocity induced by a helicopter rotor in the vortex ring state",
          "RAE TR 78125",
          "1978",
          "the two straight lines");
  static final Source JOHNSON_RING =
      new Source(
          "W. Johnson",
          "Model for Vortex Ring State Influence on Rotorcraft Flight Dynamics",
          "NASA/TP-2005-213477",
          "2005",
          "");
  static final Source WOLKOVITCH =
      new Source(
          "J. Wolkovitch",
          "Analytical prediction of vortex-ring boundaries for helicopters in steep descents",
          "Journal of the American Helicopter Society 17(3)",
          "1972",
          "the condition 2 |z| = v");
  static final Source BASSET =
      new Source(
          "P.-M. Basset, C. Chen, J. V. R. Prasad, S. Kolb",
          "Prediction of vortex ring state boundary of a helicopter in descending flight by"
              + " simulation",
          "Journal of the American Helicopter Society 53(2)",
          "2008",
          "criterion of wake transport, k = 4, eps = 0.2 (title and constants from memory)");
  static final Source STEWART =
      new Source(
          "W. Stewart",
          "Helicopter behaviour in the vortex ring conditions",
          "ARC R&M 3117",
          "1951",
          "vertical or near vertical descents of about 500 to 1,500 ft/min, five helicopters");
  static final Source HANDBOOK =
      new Source(
          "Federal Aviation Administration",
          "Helicopter Flying Handbook",
          "FAA-H-8083-21B",
          "2019",
          "chapter 11, as repeated by a training page");
  static final Source ARMY =
      new Source(
          "Department of the Army",
          "Fundamentals of Flight",
          "FM 3-04.203",
          "2007",
          "settling with power, read in a copy of the passage");
  static final Source TRADE_PRESS =
      new Source(
          "trade press",
          "airspeeds below which the ring state is met, by disc loading",
          "",
          "",
          "0 to 10, 20 and 30 kt for low, medium and high disc loading; author not recorded");
  static final Source INSTRUCTORS =
      new Source(
          "instructors and operators",
          "statements on altitude loss",
          "",
          "",
          "claims for recoveries begun at once, not measured distributions");
  static final Source CASTLES_GRAY =
      new Source(
          "W. Castles, R. B. Gray",
          "Empirical relation between induced velocity, thrust, and rate of descent of a helicopter"
              + " rotor as determined by wind-tunnel tests on four model rotors",
          "NACA TN 2474",
          "1951",
          "table I and concluding remarks");
  static final Source SMALL_ROTORS =
      new Source(
          "M. Veismann, C. Dougherty, M. Gharib",
          "Effects of rotor separation on the axial descent performance of dual-rotor"
              + " configurations",
          "Flow",
          "2023",
          "abstract");
  static final Source AUTOROTATION_GUIDE =
      new Source(
          "training page",
          "Glide and rate of descent in autorotative flight",
          "",
          "",
          "author not recorded");
  static final Source UTILITY_MANUAL =
      new Source(
          "US Air Force", "Flight manual 1H-1(U)N", "TO 1H-1(U)N-1", "", "pages 6-9 and 6-10");
  static final Source PROUTY =
      new Source(
          "R. W. Prouty",
          "Helicopter Performance, Stability, and Control",
          "PWS Publishers",
          "1986",
          "");
  static final Source COOKE_FITZPATRICK =
      new Source(
          "A. Cooke, E. Fitzpatrick", "Helicopter Test and Evaluation", "Blackwell", "2002", "");
  static final Source VERTICAL_HANDLING =
      new Source(
          "S. W. Baillie, J. M. Morgan",
          "Investigation of vertical axis handling qualities for helicopter hover and NOE flight",
          "ADP005979",
          "1987",
          "abstract");
  static final Source CUSHION =
      new Source(
          "T. McAdams", "A cushion of air", "Aircraft Owners and Pilots Association", "2009", "");
  static final Source GROUND_STUDY =
      new Source(
          "Technical University of Sofia",
          "Helicopter rotor aerodynamic characteristics in ground effect: numerical study",
          "Engineering Proceedings 100(1), 13",
          "2025",
          "abstract");
  static final Source PADFIELD =
      new Source(
          "G. D. Padfield", "Helicopter Flight Dynamics", "2nd edition", "2007", "chapter 4, Zw");
  static final Source CARPENTER =
      new Source(
          "P. J. Carpenter, B. Fridovich",
          "Effect of a rapid blade-pitch increase on the thrust and induced-velocity response of a"
              + " full-scale helicopter rotor",
          "NACA TN 3044",
          "1953",
          "apparent mass 63.7 per cent of the sphere about the rotor");
  static final Source PITT_PETERS =
      new Source(
          "D. M. Pitt, D. A. Peters",
          "Theoretical prediction of dynamic-inflow derivatives",
          "Vertica 5",
          "1981",
          "matrices M and L");
  static final Source LAMB =
      new Source(
          "H. Lamb", "Hydrodynamics", "6th edition", "1932", "potential of the circular disc");
  static final Source CHEESEMAN =
      new Source(
          "I. C. Cheeseman, W. E. Bennett",
          "The effect of the ground on a helicopter rotor in forward flight",
          "ARC R&M 3021",
          "1955",
          "thrust at constant power");
  static final Source HAYDEN =
      new Source(
          "J. S. Hayden",
          "The effect of the ground on helicopter hovering power required",
          "32nd forum of the American Helicopter Society",
          "1976",
          "induced power near the ground over that away from it");
  static final Source GAGG_FERRAR =
      new Source(
          "R. F. Gagg, E. V. Ferrar",
          "Altitude performance of aircraft engines equipped with gear-driven superchargers",
          "SAE Journal 34(6)",
          "1934",
          "P/P0 = 1.132 sigma - 0.132");
  static final Source ATMOSPHERE =
      new Source(
          "NOAA, NASA, US Air Force",
          "U.S. Standard Atmosphere, 1976",
          "NOAA-S/T 76-1562",
          "1976",
          "equations 23, 33a, 42");
  static final Source GESSOW_MYERS =
      new Source(
          "A. Gessow, G. C. Myers",
          "Aerodynamics of the Helicopter",
          "",
          "1952",
          "blade element theory with uniform inflow");
  static final Source BAILEY =
      new Source(
          "F. J. Bailey",
          "A simplified theoretical method of determining the characteristics of a lifting rotor in"
              + " forward flight",
          "NACA TR 716",
          "1941",
          "cd = 0.0087 - 0.0216 a + 0.400 a^2 (title and polar from memory)");
  static final Source HAIRER =
      new Source(
          "E. Hairer, S. P. Norsett, G. Wanner",
          "Solving Ordinary Differential Equations I",
          "2nd edition",
          "1993",
          "chapter II");
  static final Source MECHANICS =
      new Source("closed form", "elementary mechanics", "", "", "the solution by quadratures");
  static final Source LAGUERRE =
      new Source("Hipparchus", "LaguerreSolver", "4.0.3", "", "all complex roots");
  static final Source EJML =
      new Source(
          "Efficient Java Matrix Library", "eigenvalues", "0.46.1", "", "general real matrix");
  static final Source QUADRATURE =
      new Source("Hipparchus", "Gauss-Legendre integration", "4.0.3", "", "");
  static final Source DIFFERENCES =
      new Source("numerical differentiation", "central differences", "", "", "step 1e-5");
  static final Source EXTRAPOLATION =
      new Source("Hipparchus", "GraggBulirschStoerIntegrator", "4.0.3", "", "");
  static final Source OWN_FORMULATION =
      new Source(
          "this project",
          "the ring-state model as its documentation words it",
          "",
          "",
          "worked out a second time from roots by EJML and linear equations");
  static final Source REQUIREMENT =
      new Source("this project", "what the model is required to do", "", "", "");

  private Sources() {}
}
