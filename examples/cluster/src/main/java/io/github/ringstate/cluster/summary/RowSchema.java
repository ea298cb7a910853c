package io.github.ringstate.cluster.summary;

import io.github.ringstate.study.sweep.Column;
import java.util.List;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/** The columns of a sweep's rows as Spark has them. */
public final class RowSchema {

  private RowSchema() {}

  /**
   * The schema of rows.
   *
   * @param columns the columns
   * @return the same columns in the same order; whole numbers are never missing
   */
  public static StructType of(List<Column> columns) {
    StructType schema = new StructType();
    for (Column column : columns) {
      schema =
          switch (column.type()) {
            case INTEGER -> schema.add(column.name(), DataTypes.LongType, false);
            case NUMBER -> schema.add(column.name(), DataTypes.DoubleType, true);
            case WORD -> schema.add(column.name(), DataTypes.StringType, true);
          };
    }
    return schema;
  }
}
