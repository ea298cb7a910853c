package io.github.ringstate.craft;

import io.github.ringstate.quantity.Parameter;
import io.github.ringstate.quantity.Unit;
import java.util.List;

/** The numbers of a helicopter's body. */
public final class CraftBody {

  /** Flat-plate area met by air from ahead. Default 0.5 m2, range 0 to 20 m2. */
  public static final Parameter FORWARD_AREA =
      Parameter.of("forward area", Unit.SQUARE_METRE, 0, 20, 0.5, Helicopter.INVENTED);

  /** Flat-plate area met by air from the side. Default 1.8 m2, range 0 to 60 m2. */
  public static final Parameter SIDE_AREA =
      Parameter.of("side area", Unit.SQUARE_METRE, 0, 60, 1.8, Helicopter.INVENTED);

  /** Flat-plate area met by air from below. Default 1.5 m2, range 0 to 60 m2. */
  public static final Parameter UNDERSIDE_AREA =
      Parameter.of("underside area", Unit.SQUARE_METRE, 0, 60, 1.5, Helicopter.INVENTED);

  /**
   * Part of the thrust that the slipstream takes back by pushing on the body. Default 0.02, range 0
   * to 0.2 (a pure number).
   */
  public static final Parameter DOWNLOAD =
      Parameter.of("download", Unit.ONE, 0, 0.2, 0.02, "invented; published values go beyond 0.1");

  /** Distance from the rotor shaft to the tail rotor. Default 4.6 m, range 1 to 30 m. */
  public static final Parameter TAIL_ARM =
      Parameter.of("tail arm", Unit.METRE, 1, 30, 4.6, Helicopter.INVENTED);

  /** All parameters of a body. */
  static final List<Parameter> PARAMETERS =
      List.of(FORWARD_AREA, SIDE_AREA, UNDERSIDE_AREA, DOWNLOAD, TAIL_ARM);

  private CraftBody() {}
}
