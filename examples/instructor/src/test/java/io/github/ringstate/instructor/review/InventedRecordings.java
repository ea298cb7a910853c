package io.github.ringstate.instructor.review;

import static java.nio.charset.StandardCharsets.US_ASCII;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.encounter.Disturbances;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.inflow.SmoothMomentum;
import io.github.ringstate.pilot.Forward;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.SplittableRandom;
import org.hipparchus.util.FastMath;

/**
 * Makes the demo recordings: invented flights over the open sea, written down with errors such as
 * instruments have (all of them assumed). Run with a folder as its argument it writes them there.
 */
final class InventedRecordings {

  private static final double EARTH = 6_371_000.8;
  private static final double LATITUDE = FastMath.toRadians(45);
  private static final double LONGITUDE = FastMath.toRadians(-40);

  /** Height of the encounter's own level, m. */
  private static final double LEVEL = 500;

  private static final Instant START = Instant.parse("2030-01-01T10:00:00Z");

  /** Standard deviations: heights by satellite, m, from reading to reading and for a minute. */
  private static final double HEIGHT = 0.8;

  private static final double DRIFT = 1.5;
  private static final double DRIFT_TIME = 60;

  /** Places and speeds by satellite, m and m/s. */
  private static final double PLACE = 0.15;

  private static final double SPEED = 0.1;

  /** Pressure altitude, m; vertical speed, m/s; airspeed, m/s; angles, rad. */
  private static final double PRESSURE = 0.4;

  private static final double VERTICAL = 0.2;
  private static final double AIRSPEED = 0.5;
  private static final double ANGLE = FastMath.toRadians(0.3);

  private final SplittableRandom random;
  private double drift;

  private InventedRecordings(long seed) {
    random = new SplittableRandom(seed);
    drift = DRIFT * random.nextGaussian();
  }

  public static void main(String[] folder) throws IOException {
    for (DemoRecording demo : DemoRecording.ALL) {
      Files.write(Path.of(folder[0], demo.file()), content(demo.name()));
    }
  }

  /** The flight behind a recording. */
  static InventedFlight flight(String name) {
    Encounter plain = Encounter.of(DemoCraft.TRAINER);
    Encounter forward = plain.withRecovery(Technique.FORWARD.standard());
    return switch (name) {
      case "gnss-1hz" -> InventedFlight.of(forward.withDelay(1.5), 1);
      case "gnss-5hz" ->
          InventedFlight.of(plain.withRecovery(Technique.LATERAL.standard()).withDelay(1), 5);
      case "instruments" -> InventedFlight.of(forward.withDelay(2), 5);
      default -> InventedFlight.of(otherForm(), 5);
    };
  }

  /** Another inflow model, gusts, and a pilot who lowers the nose late, slowly and too little. */
  private static Encounter otherForm() {
    ParameterSet pilot =
        ParameterSet.standard(Forward.PARAMETERS).with(Forward.RATE, 6).with(Forward.NOSE_DOWN, 11);
    ParameterSet air =
        ParameterSet.standard(Disturbances.PARAMETERS)
            .with(Disturbances.GUST_WIND, 10)
            .with(Disturbances.SHAKING, 5);
    Encounter encounter = Encounter.of(DemoCraft.TRAINER);
    return encounter
        .withInflow(SmoothMomentum.standard(), encounter.boundary())
        .withRecovery(new Forward(pilot))
        .withDelay(1.3)
        .withDisturbances(new Disturbances(air, 7));
  }

  static byte[] content(String name) {
    InventedFlight flight = flight(name);
    String text =
        switch (name) {
          case "gnss-1hz" -> new InventedRecordings(1).gpx(flight);
          case "gnss-5hz" -> new InventedRecordings(2).nmea(flight);
          case "instruments" -> new InventedRecordings(3).csv(flight);
          default -> new InventedRecordings(4).csv(flight);
        };
    return text.getBytes(US_ASCII);
  }

  private double off(double deviation) {
    return deviation * random.nextGaussian();
  }

  /** Height by satellite, with an error that stays for a minute. */
  private double height(InventedFlight.Point point, double step) {
    double kept = FastMath.exp(-step / DRIFT_TIME);
    drift = kept * drift + FastMath.sqrt(1 - kept * kept) * off(DRIFT);
    return LEVEL + point.height() + drift + off(HEIGHT);
  }

  private double latitude(InventedFlight.Point point) {
    return FastMath.toDegrees(LATITUDE + (point.north() + off(PLACE)) / EARTH);
  }

  private double longitude(InventedFlight.Point point) {
    return FastMath.toDegrees(
        LONGITUDE + (point.east() + off(PLACE)) / (EARTH * FastMath.cos(LATITUDE)));
  }

  private static Instant moment(InventedFlight.Point point) {
    return START.plusMillis(Math.round(1000 * point.time()));
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  private String gpx(InventedFlight flight) {
    StringBuilder text =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <gpx version="1.1" creator="ringstate" xmlns="http://www.topografix.com/GPX/1/1">
            <metadata><name>Invented demo recording, no real flight</name></metadata>
            <trk><trkseg>
            """);
    for (InventedFlight.Point point : flight.points()) {
      text.append(
          format(
              "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>%.1f</ele><time>%s</time></trkpt>\n",
              latitude(point), longitude(point), height(point, 1), moment(point)));
    }
    return text.append("</trkseg></trk></gpx>\n").toString();
  }

  private String nmea(InventedFlight flight) {
    StringBuilder text = new StringBuilder();
    text.append(sentence("PXXXX,invented demo recording,no real flight"));
    DateTimeFormatter clock =
        DateTimeFormatter.ofPattern("HHmmss.SS", Locale.ROOT).withZone(ZoneOffset.UTC);
    for (InventedFlight.Point point : flight.points()) {
      String time = clock.format(moment(point));
      String place = degrees(latitude(point), 2, "N") + "," + degrees(-longitude(point), 3, "W");
      double north = point.speedNorth() + off(SPEED);
      double east = point.speedEast() + off(SPEED);
      text.append(
          sentence(
              "GPGGA,"
                  + time
                  + ","
                  + place
                  + format(",1,10,0.8,%.1f,M,0.0,M,,", height(point, 0.2))));
      text.append(
          sentence(
              "GPRMC,"
                  + time
                  + ",A,"
                  + place
                  + format(
                      ",%.2f,%.1f,010130,,,A",
                      Unit.KNOT.fromSi(FastMath.hypot(north, east)), direction(north, east))));
    }
    return text.toString();
  }

  private static String degrees(double value, int digits, String side) {
    double whole = Math.floor(value);
    return format("%0" + digits + ".0f%08.5f,%s", whole, 60 * (value - whole), side);
  }

  private static double direction(double north, double east) {
    double degrees = Math.rint(10 * FastMath.toDegrees(FastMath.atan2(east, north))) / 10;
    return (degrees + 360) % 360;
  }

  private static String sentence(String content) {
    int sum = 0;
    for (int i = 0; i < content.length(); i++) {
      sum ^= content.charAt(i);
    }
    return "$" + content + format("*%02X\r\n", sum);
  }

  private String csv(InventedFlight flight) {
    StringBuilder text =
        new StringBuilder(
            "time_s,pressure_altitude_ft,vertical_speed_fpm,ground_speed_kt,track_deg,airspeed_kt,"
                + "heading_deg,pitch_deg,bank_deg,collective_pct,remark\r\n");
    String remark = "invented demo recording, no real flight";
    for (InventedFlight.Point point : flight.points()) {
      double north = point.speedNorth() + off(SPEED);
      double east = point.speedEast() + off(SPEED);
      double air =
          FastMath.hypot(
              point.speedNorth() - point.held().windNorth(),
              point.speedEast() - point.held().windEast());
      double vertical = Unit.FOOT_PER_MINUTE.fromSi(point.verticalSpeed() + off(VERTICAL));
      text.append(
          format(
              "%.1f,%.0f,%.0f,%.1f,%.1f,%.0f,%.0f,%.1f,%.1f,%.1f,%s\r\n",
              point.time(),
              Unit.FOOT.fromSi(LEVEL + point.height() + off(PRESSURE)),
              20 * Math.rint(vertical / 20),
              Unit.KNOT.fromSi(FastMath.hypot(north, east)),
              direction(north, east),
              Unit.KNOT.fromSi(Math.max(0, air + off(AIRSPEED))),
              (FastMath.toDegrees(point.held().heading()) + 720) % 360,
              FastMath.toDegrees(point.held().pitch() + off(ANGLE)),
              FastMath.toDegrees(point.held().bank() + off(ANGLE)),
              100 * point.held().collective(),
              remark.isEmpty() ? "" : "\"" + remark + "\""));
      remark = "";
    }
    return text.toString();
  }
}
