using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Contract;

/// <summary>Reads and writes a pair of coordinates as a JSON list of two.</summary>
internal sealed class PairConverter<TPair, TCoordinate> : JsonConverter<TPair>
    where TPair : class, IPair<TPair, TCoordinate>
    where TCoordinate : struct
{
    public override TPair Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var coordinate = (JsonConverter<TCoordinate>)options.GetConverter(typeof(TCoordinate));
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            throw new JsonException("A point is a list of two lengths.");
        }

        TCoordinate x = Next(ref reader, coordinate, options),
            y = Next(ref reader, coordinate, options);
        return reader.Read() && reader.TokenType == JsonTokenType.EndArray
            ? TPair.Of(x, y)
            : throw new JsonException("A point is a list of two lengths.");
    }

    public override void Write(Utf8JsonWriter writer, TPair value, JsonSerializerOptions options)
    {
        var coordinate = (JsonConverter<TCoordinate>)options.GetConverter(typeof(TCoordinate));
        writer.WriteStartArray();
        coordinate.Write(writer, value.X, options);
        coordinate.Write(writer, value.Y, options);
        writer.WriteEndArray();
    }

    private static TCoordinate Next(ref Utf8JsonReader reader, JsonConverter<TCoordinate> coordinate, JsonSerializerOptions options)
    {
        reader.Read();
        return coordinate.Read(ref reader, typeof(TCoordinate), options);
    }
}
