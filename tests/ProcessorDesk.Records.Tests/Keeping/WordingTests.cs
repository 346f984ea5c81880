using System.Reflection;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

public sealed class WordingTests
{
    public static TheoryData<string> Worded => [.. Overloads().Select(method => method.GetParameters()[0].ParameterType.FullName!)];

    [Fact]
    public void Every_choice_that_is_kept_has_words()
    {
        var kept = typeof(RecordsContext).Assembly.GetExportedTypes().Where(type => type.IsEnum).Concat([typeof(Species), typeof(ArrivalState)]).ToList();

        Assert.True(kept.Count > 15);
        Assert.Empty(kept.Except(Overloads().Select(method => method.GetParameters()[0].ParameterType)));
    }

    [Theory]
    [MemberData(nameof(Worded))]
    public void Every_case_has_words_of_its_own_that_are_not_its_code_name(string choice)
    {
        var method = Overloads().Single(one => one.GetParameters()[0].ParameterType.FullName == choice);
        var cases = Enum.GetValues(method.GetParameters()[0].ParameterType).Cast<object>().ToList();
        var words = cases.ConvertAll(one => (string)method.Invoke(null, [one])!);

        Assert.NotEmpty(cases);
        Assert.All(words, word => Assert.Equal(word, word.Trim()));
        Assert.Equal(words.Count, words.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        foreach (var (code, word) in cases.Select(one => one.ToString()!).Zip(words))
            Assert.False(word.Length == 0 || IsCodeName(code, word), $"{choice}.{code} reads \"{word}\".");
    }

    [Theory]
    [InlineData("HotHanging", "HotHanging", true)]
    [InlineData("HotHanging", "hothanging", true)]
    [InlineData("HotHanging", "Hot hanging", false)]
    [InlineData("Bone", "Bone", false)]
    public void The_rule_on_code_names_can_fail(string code, string word, bool isCodeName) => Assert.Equal(isCodeName, IsCodeName(code, word));

    [Fact]
    public void A_number_that_is_no_case_has_no_words() =>
        Assert.ThrowsAny<Exception>(() => Wording.Of((HoldReason)99));

    [Fact]
    public void Every_code_of_the_cut_menu_has_a_name()
    {
        foreach (var group in CutMenu.Groups)
        {
            Assert.NotEqual(group.Code, CutMenu.GroupName(group.Code));
            Assert.NotEmpty(group.Cuts);
            Assert.All(group.Cuts, cut => Assert.NotEqual(cut, CutMenu.CutName(cut)));
            Assert.All(CutMenu.Styles, style => Assert.Contains(style.CutFor(group.Code), group.Cuts));
        }
    }

    /// <summary>The code name with its capitals run together, as it would stand on a page that forgot the words.</summary>
    private static bool IsCodeName(string code, string word) =>
        code.Skip(1).Any(char.IsAsciiLetterUpper) && code.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<MethodInfo> Overloads() =>
        typeof(Wording).GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(method => method.Name == nameof(Wording.Of) && method.GetParameters() is [{ ParameterType.IsEnum: true }]);
}
