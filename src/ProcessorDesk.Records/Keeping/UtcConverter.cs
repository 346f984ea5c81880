using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace ProcessorDesk.Records;

/// <summary>Moments are UTC in the file and come back as UTC.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTime, DateTime>(
    moment => moment.Kind == DateTimeKind.Utc ? moment : moment.ToUniversalTime(),
    moment => DateTime.SpecifyKind(moment, DateTimeKind.Utc));
