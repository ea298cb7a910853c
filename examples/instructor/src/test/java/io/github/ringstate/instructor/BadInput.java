package io.github.ringstate.instructor;

import io.github.ringstate.files.error.UserError;
import java.util.List;
import java.util.stream.Stream;

/**
 * Something that the tool must refuse.
 *
 * @param what what is wrong, for people
 * @param status the exit status
 * @param args the arguments; {@code DIR} stands for a folder with the files of {@link #FILES}
 * @param message parts that the message must have; {@code LINE text} stands for the number of the
 *     last line of the craft file with that text
 */
record BadInput(String what, int status, List<String> args, List<String> message) {

  /** Changes to the printed trainer: file, what to replace, by what. */
  static final List<List<String>> FILES =
      List.of(
          List.of("unknown-key.toml", "radius_m =", "radius_ft ="),
          List.of("unknown-table.toml", "[body]", "[bodywork]"),
          List.of("missing-key.toml", "solidity = 0.03\n", ""),
          List.of("wrong-type.toml", "radius_m = 3.9", "radius_m = \"3.9\""),
          List.of("not-a-number.toml", "radius_m = 3.9", "radius_m = nan"),
          List.of("infinite.toml", "radius_m = 3.9", "radius_m = inf"),
          List.of("out-of-range.toml", "radius_m = 3.9", "radius_m = 39.0"),
          List.of("twice.toml", "solidity = 0.03\n", "solidity = 0.03\nsolidity = 0.03\n"),
          List.of("no-toml.toml", "solidity = 0.03", "solidity 0.03"),
          List.of("no-word.toml", "\"piston\"", "\"steam\""),
          List.of("two-words.toml", "\"trainer\"", "\"my trainer\""),
          List.of(
              "bad-curve.toml",
              "\ndescription",
              "\nheight_velocity_kt_ft = [[0, 400], [30]]\ndescription"),
          List.of("too-heavy.toml", "\nmass_kg = 600.0", "\nmass_kg = 630.0"),
          List.of("huge.toml", "radius_m = 3.9", "radius_m = 1e999999999"),
          List.of("number-for-table.toml", "[weight]", "weight = 3\n[weights]"));

  /** What is wrong in the use of an option, the arguments, and parts of the message. */
  private static final String USE =
      """
      unknown command | lose | lose
      unknown option | loss --no-such-option | --no-such-option
      option twice | loss --entry steep --entry steep | --entry
      option without value | loss --entry | --entry
      argument too many | craft trainer twin | twin
      unknown craft | loss --craft gyro | --craft | 'gyro' | trainer, utility
      wind from nowhere | runs --wind-kt 9 --wind-from-deg 361 | '361' | 0 to 360 deg
      negative wind | runs --wind-from-deg 9 --wind-kt -1 | --wind-kt | '-1' | 0 to 60 kt
      wind that is none | runs --wind-from-deg 9 --wind-kt NaN | --wind-kt | 'NaN' | 0 to 60 kt
      gust below the mean | runs --wind-from-deg 9 --wind-kt 20 --gust-kt 19 | '19' | 20 to 90 kt
      wind exponent | runs --wind-from-deg 9 --wind-kt 9 --wind-exponent 0.7 | --wind-exponent | 0 to 0.6
      wind aloft in no order | runs --wind-from-deg 9 --wind-kt 9 --wind-aloft 900:20/9,500:20/9 | --wind-aloft | every height above the one before
      wind aloft without a height | runs --wind-from-deg 9 --wind-kt 9 --wind-aloft 240/18 | '240/18' | height:direction/speed
      wind aloft from nowhere | runs --wind-from-deg 9 --wind-kt 9 --wind-aloft 500:361/18 | '361' | 0 to 360 deg
      wind aloft that ends below | runs --wind-from-deg 9 --wind-kt 9 --height-ft 600 --wind-aloft 500:20/18 | --wind-aloft ends at 500 ft | 600 ft
      wind aloft in calm air | runs --calm --wind-aloft 500:20/18 | --calm and --wind-aloft
      gust grown too great | runs --wind-from-deg 9 --wind-kt 9 --gust-kt 80 --wind-exponent 0.6 --height-ft 900 | --gust-kt | 0 to 100 kt
      negative margin | runs --calm --margin-ft -1 | --margin-ft | '-1' | 0 to 3280 ft
      no margin | runs --calm --margin-ft NaN | --margin-ft | 'NaN' | 0 to 3280 ft
      ground speed | runs --calm --ground-speed-kt 61 | '61' | 0 to 60 kt
      half a pilot | runs --calm --pilots 99.5 | --pilots | '99.5' | a whole number
      unknown technique | runs --calm --recovery none | 'none' | forward, lateral
      unknown paper | loss --paper a5 | --paper | 'a5' | a4, letter
      unknown units | loss --units imperial | --units | aviation, si
      no sheet of that | boundary --format pdf | 'pdf' | html, svg, png
      delay of no flight | boundary --delay 3 | --delay needs --recovery
      entry of no flight | boundary --entry steep | --entry needs --recovery
      flight in a table | boundary --recovery lateral | --recovery | html, svg, png
      no page of that | craft --format html | 'html' | text, csv, json
      negative mass | loss --mass-kg -5 | --mass-kg | '-5' | 420 to 620 kg
      mass above the limit | loss --mass-kg 621 | '621' | 420 to 620 kg
      second mass bad | loss --mass-kg 600,621 | --mass-kg | '621'
      mass that is none | loss --mass-kg NaN | --mass-kg | 'NaN' | 420 to 620
      infinite mass | loss --mass-kg Infinity | --mass-kg | 'Infinity'
      mass with a letter | loss --mass-kg 600d | --mass-kg | '600d'
      hexadecimal mass | loss --mass-kg 0x1p9 | --mass-kg | '0x1p9'
      empty list | loss --delays= | --delays | ''
      empty part | loss --delays 0,,1 | --delays | '0,,1'
      same delay twice | loss --delays 1,2,1.0 | --delays | twice
      negative delay | loss --delays -1 | --delays | '-1' | 0 to 60 s
      delay too long | loss --delays 0.0,61 | --delays | '61' | 0 to 60 s
      huge delay | loss --delays 1e999 | --delays | '1e999' | 0 to 60 s
      list where one is due | fly --delay 1,2 | --delay | '1,2'
      unknown entry | loss --entry spiral | 'spiral' | settling, steep, downwind
      unknown recovery | loss --recovery up | --recovery | 'up' | forward
      recovery twice | loss --recovery none,none | --recovery | twice
      unknown recovery | fly --recovery up | --recovery | 'up' | lateral
      unknown format | boundary --format xml | --format | 'xml' | text, csv, json
      step zero | fly --step 0 | --step | '0' | 0.01 to 10 s
      step of airspeed | boundary --step-kt -2 | --step-kt | '-2' | 0.1 to 20 kt
      height zero | loss --height-ft 0 | --height-ft | '0' | 3.3 to 9840 ft
      wind from nowhere | loss --entry settling --wind-kt -3 | --wind-kt | '-3' | 0 to 60 kt
      too hot | loss --oat-c 80 | --oat-c | '80' | -45 to 75 C
      no temperature | loss --oat-c warm | --oat-c | 'warm'
      too high | loss --pressure-altitude-ft 40000 | --pressure-altitude-ft | '40000' | -3280 to 36080 ft
      altitude twice | loss --pressure-altitude-ft 0,0.0 | --pressure-altitude-ft | twice
      beyond the rotor | loss --craft heavy --mass-kg 9600 --pressure-altitude-ft 36000 | --mass-kg | 9600 kg | 36000 ft
      pilots and a precision | loss --pilots 8 --precision-ft 5 | --pilots and --precision-ft exclude each other
      text in a PDF | card --output DIR/a.pdf | --output | with --format pdf
      a worse day too hot | floor --compare 0,41,0 | --compare | 0 to 40 K
      a worse day too heavy | runs --calm --compare 900,0,0 | --compare | 620 kg
      no mass, in short | loss --mass NaN | --mass-kg | 'NaN' | 420 to 620 kg
      wind by the clock | runs --wind-kt 9 --wind-from 400deg | --wind-from-deg | 0 to 360 deg
      terrain in a text | fly --height-ft 300 --terrain-ft 0:0,90:9 | --format html
      no precision | floor --precision-ft 0 | --precision-ft | 0.5 to 1000 ft
      draws of cards | loss --pilots 8 --draws cards | 'cards' | sobol, independent
      no pilots | loss --pilots 0 | --pilots | '0' | 1 to 10000000
      negative pilots | floor --pilots -5 | --pilots | '-5' | 1 to 10000000
      half a pilot | loss --pilots 2.5 | --pilots | '2.5' | a whole number
      pilots that are none | loss --pilots NaN | --pilots | 'NaN'
      endless pilots | floor --pilots 1e999999999 | --pilots | '1e999999999'
      no seed | loss --pilots 5 --seed one | --seed | 'one' | a whole number
      huge seed | floor --seed 9223372036854775808 | --seed | 9223372036854775807
      seed of nothing | loss --seed 3 | --seed needs --pilots
      unknown state | floor --state sleepy | --state | 'sleepy' | primed, attentive
      two states | loss --pilots 5 --state primed,startled | 'primed,startled'
      state twice | floor --state primed,primed | --state | twice
      state of nobody | loss --state primed | --state needs --pilots
      two delays each | loss --pilots 5 --delays 1 --state primed | --delays and --state
      models without pilots | loss --models 5 | --models needs --pilots
      one model | floor --models 1 | --models | '1' | 2 to 1000
      unknown clock | loss --clock wall | --clock | 'wall' | boundary, cue
      shaking of nobody | loss --shaking-pct 5 | --shaking-pct needs | --seed
      too much shaking | floor --shaking-pct 31 | '31' | 0 to 30 %
      negative gusts | loss --pilots 5 --turbulence -1 | --turbulence | 0 to 60 kt
      gusts of nobody | loss --turbulence 15 | --turbulence needs --pilots
      too much shear | loss --shear 0.7 | --shear | '0.7' | 0 to 0.6
      negative shear | floor --shear -0.1 | --shear | '-0.1' | 0 to 0.6
      no share | floor --share 0 | --share | '0' | 0.01 to 0.999
      whole share | floor --share 1 | --share | '1' | 0.01 to 0.999
      share in per cent | floor --share 95 | --share | '95' | 0.01 to 0.999
      share that is none | floor --share NaN | --share | 'NaN'
      negative margin | floor --margin-ft -1 | --margin-ft | '-1' | 0 to 3280 ft
      height of a floor | floor --height-ft 0 | --height-ft | '0' | 3.3 to 9840
      end above the beginning | card --start-height-ft 500 --abort-height-ft 200m | --abort-height-ft | '200m' | --start-height-ft, which is 500
      run of a plan without a wind | plan --run-gust-kt 3 | --run-wind-kt is not given | --run-calm
      wind of a run in a plan | plan --run-wind-kt 9 --run-wind-from-deg 400 --wind-kt 5 | --run-wind-from-deg | '400'
      no folder for sheets | brief DIR/x.toml --folder= | --folder | ''
      no output | craft --output= | --output | ''
      """;

  /** The same for files. */
  private static final String FILE =
      """
      output is a folder | craft --output DIR | DIR | directory
      output in no folder | craft --output DIR/no/x.txt | DIR/no/x.txt | folder
      output below a file | craft --output DIR/twice.toml/x | folder
      output is a device | craft --output /dev/null | /dev/null | not a plain file
      no such file | loss --craft DIR/none.toml | DIR/none.toml | no such file
      no name of a plan | loss --plan= | '' | no name of a file
      nothing to run again | rerun DIR/none.json | DIR/none.json | there is no such file
      craft is a folder | loss --craft DIR/ | DIR/ | cannot be read
      craft is no text | loss --craft DIR/no-text.toml | no-text.toml | UTF-8
      craft is too large | loss --craft DIR/large.toml | large.toml | larger than
      craft is empty | craft DIR/empty.toml | empty.toml | name is missing
      bad-curve.toml | loss --craft DIR/bad-curve.toml | height_velocity_kt_ft | points [[airspeed, height], ...]
      unknown-key.toml | loss --craft DIR/unknown-key.toml | LINE radius_ft | 'rotor.radius_ft' | radius_m, solidity
      unknown-table.toml | loss --craft DIR/unknown-table.toml | LINE [bodywork] | 'bodywork' | [body]
      missing-key.toml | loss --craft DIR/missing-key.toml | rotor.solidity is missing | 0.01 to 0.2
      wrong-type.toml | loss --craft DIR/wrong-type.toml | LINE radius_m | rotor.radius_m | '3.9' | 1 to 15 m
      not-a-number.toml | loss --craft DIR/not-a-number.toml | LINE radius_m | rotor.radius_m | 'nan' | 1 to 15 m
      infinite.toml | loss --craft DIR/infinite.toml | LINE radius_m | rotor.radius_m | 'inf' | 1 to 15 m
      huge.toml | loss --craft DIR/huge.toml | LINE radius_m | rotor.radius_m | '1E+999999999' | 1 to 15 m
      out-of-range.toml | loss --craft DIR/out-of-range.toml | LINE radius_m | rotor.radius_m | '39' | 1 to 15 m
      twice.toml | loss --craft DIR/twice.toml | LINE solidity = 0.03 | 'solidity = 0.03' | Duplicate key
      no-toml.toml | loss --craft DIR/no-toml.toml | LINE solidity 0.03 | 'solidity 0.03'
      no-word.toml | loss --craft DIR/no-word.toml | LINE engine_kind | 'steam' | "piston" or "turbine"
      two-words.toml | loss --craft DIR/two-words.toml | LINE name = "my | name | 'my trainer' | one word
      too-heavy.toml | loss --craft DIR/too-heavy.toml | LINE mass_kg = 630 | weight.mass_kg | 420 to 620 kg
      number-for-table.toml | loss --craft DIR/number-for-table.toml | LINE weight = 3 | weight | '3' | a table, [weight]
      """;

  static final List<BadInput> ALL =
      Stream.concat(read(USE, UserError.USAGE), read(FILE, UserError.FILE)).toList();

  private static Stream<BadInput> read(String table, int status) {
    return table
        .lines()
        .map(row -> List.of(row.split(" \\| ", -1)))
        .map(
            row ->
                new BadInput(
                    row.get(0),
                    status,
                    List.of(row.get(1).split(" ", -1)),
                    row.subList(2, row.size())));
  }

  @Override
  public String toString() {
    return what + ": " + String.join(" ", args);
  }
}
