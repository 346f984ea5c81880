using System.Text.RegularExpressions;
using Xunit;

namespace ProcessorDesk.Web.Tests.House;

/// <summary>Words that may not occur in the code, each with its reason in DEVELOPERS.md.</summary>
public sealed partial class WordsTests
{
    [Fact]
    public void Trade_has_no_floating_point() =>
        Repository.ExpectNone(Occurrences(FloatingPoint(), Trade()));

    [Fact]
    public void The_clock_is_read_only_through_the_time_provider() =>
        Repository.ExpectNone(Occurrences(DirectClock(), OutsideTests()));

    [Fact]
    public void No_type_is_called_manager_helper_or_service() =>
        Repository.ExpectNone(Occurrences(EmptyTypeName(), Repository.HandWritten(".cs")));

    [Fact]
    public void Nothing_is_left_for_later() =>
        Repository.ExpectNone(Occurrences(LeftForLater(), Repository.HandWritten(".cs", ".cshtml", ".js", ".css")));

    [Theory]
    [InlineData("public static double Pounds")]
    [InlineData("/// a float of pounds")]
    public void The_rule_on_floating_point_can_fail(string line) => Assert.Matches(FloatingPoint(), line);

    [Theory]
    [InlineData("DateTime.UtcNow")]
    [InlineData("DateTimeOffset.Now.Date")]
    [InlineData("DateTime.Today")]
    public void The_rule_on_the_clock_can_fail(string line) => Assert.Matches(DirectClock(), line);

    [Theory]
    [InlineData("internal sealed class JobManager(Store store)")]
    [InlineData("public readonly record struct WeightHelper")]
    [InlineData("public interface IJobService")]
    public void The_rule_on_type_names_can_fail(string line) => Assert.Matches(EmptyTypeName(), line);

    private static IEnumerable<string> Trade() =>
        Repository.HandWritten(".cs").Where(file => file.StartsWith("src/ProcessorDesk.Trade/", StringComparison.Ordinal));

    private static IEnumerable<string> OutsideTests() =>
        Repository.HandWritten(".cs", ".cshtml").Where(file => !file.StartsWith("tests/", StringComparison.Ordinal));

    /// <summary>Found lines as "file:line: text"; these tests, which spell the words out, are left out.</summary>
    private static IEnumerable<string> Occurrences(Regex word, IEnumerable<string> files)
    {
        var searched = files.Where(file => !file.EndsWith("House/WordsTests.cs", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(searched);
        return
            from file in searched
            from line in Repository.Lines(file).Index()
            where word.IsMatch(line.Item)
            select $"{file}:{line.Index + 1}: {line.Item.Trim()}";
    }

    [GeneratedRegex(@"\b(double|float)\b")]
    private static partial Regex FloatingPoint();

    [GeneratedRegex(@"\bDateTime(Offset)?\.(UtcNow|Now|Today)\b")]
    private static partial Regex DirectClock();

    /// <summary>A tag helper is the framework's own word for an element of a page.</summary>
    [GeneratedRegex(@"\b(class|record|struct|interface)\s+\w*(Manager|(?<!Tag)Helpers?|Service|Utils?|Dto)\b")]
    private static partial Regex EmptyTypeName();

    [GeneratedRegex(@"\b(TODO|FIXME|HACK)\b|NotImplementedException|\bSkip\s*=\s*""")]
    private static partial Regex LeftForLater();
}
