using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Owners;

public sealed class OwnerQueriesTests : IClassFixture<OwnersOnFile>
{
    private readonly ShopFile _shop;

    public OwnerQueriesTests(OwnersOnFile file) => _shop = file.Shop;

    [Theory]
    [InlineData("Kowalczyk", "Anna Kowalczyk")]
    [InlineData("walcz", "Anna Kowalczyk")]
    [InlineData("KOWAL", "Anna Kowalczyk")]
    [InlineData("  anna   kowal ", "Anna Kowalczyk")]
    [InlineData("kowal anna", "Anna Kowalczyk")]
    [InlineData("An Kowalczyk", "Anna Kowalczyk")]
    [InlineData("muller", "Jürgen Müller")]
    [InlineData("MÜLLER", "Jürgen Müller")]
    [InlineData("Mu\u0308ller", "Jürgen Müller")]
    [InlineData("jurgen", "Jürgen Müller")]
    [InlineData("nunez", "Inés Núñez")]
    [InlineData("o'dell", "Pat O'Dell")]
    [InlineData("O’Dell", "Pat O'Dell")]
    [InlineData("dell", "Pat O'Dell")]
    [InlineData("Reed-Marsh", "Kim Reed-Marsh")]
    [InlineData("marsh", "Kim Reed-Marsh")]
    public void An_owner_is_found_by_any_part_of_the_name(string typed, string name) => Assert.Equal([name], Find(typed));

    [Theory]
    [InlineData("555-014-7788")]
    [InlineData("(555) 014-7788")]
    [InlineData("555.014.7788")]
    [InlineData("555 014 7788")]
    [InlineData("5550147788")]
    [InlineData("+1 555 014 7788")]
    [InlineData("1-555-014-7788")]
    [InlineData("7788")]
    [InlineData("014-77")]
    [InlineData("77 88")]
    [InlineData("kowal 7788")]
    public void An_owner_is_found_by_the_phone_in_any_writing(string typed) => Assert.Equal(["Anna Kowalczyk"], Find(typed));

    [Theory]
    [InlineData("an", new[] { "Anna Kowalczyk" })]
    [InlineData("AN", new[] { "Anna Kowalczyk" })]
    [InlineData("k", new[] { "Kim Reed-Marsh" })]
    [InlineData("Kowalczyk 0000", new string[0])]
    [InlineData("nobody", new string[0])]
    [InlineData("", new string[0])]
    [InlineData("   ", new string[0])]
    [InlineData(null, new string[0])]
    public void A_short_text_is_the_beginning_of_a_name_and_a_wrong_word_finds_nobody(string? typed, string[] names) =>
        Assert.Equal(names, Find(typed));

    [Theory]
    [InlineData("\"")]
    [InlineData("\"\"\"")]
    [InlineData("kowal\" OR \"muller")]
    [InlineData("Name:kowal")]
    [InlineData("kowal* NEAR(muller)")]
    [InlineData("NOT kowal")]
    [InlineData("^kowal")]
    [InlineData("%")]
    [InlineData("_")]
    [InlineData("'; DROP TABLE Owners; --")]
    [InlineData("()-+")]
    [InlineData("-")]
    [InlineData("\0")]
    [InlineData("🦌🦌🦌")]
    public void Signs_of_the_query_language_are_harmless(string typed)
    {
        Assert.True(Find(typed).Count <= 1);
        Assert.Equal(["Anna Kowalczyk"], Find("kowalczyk"));
    }

    [Fact]
    public void An_owner_who_changed_name_and_phone_is_found_by_the_new_ones_only()
    {
        var id = _shop.Do((records, _) =>
        {
            var owner = new Owner("Before Wedding", "555-0171");
            records.Owners.Add(owner);
            records.SaveChanges();
            return owner.Id;
        });
        Assert.Equal(["Before Wedding"], Find("wedding"));

        _shop.Do((records, _) =>
        {
            var owner = records.Owners.Single(one => one.Id == id);
            owner.Describe("After Marriage", "555-0172", null, null);
            return owner;
        });

        Assert.Empty(Find("wedding"));
        Assert.Empty(Find("5550171"));
        Assert.Equal(["After Marriage"], Find("marriage"));
        Assert.Equal(["After Marriage"], Find("0172"));
    }

    private List<string> Find(string? typed)
    {
        using var records = _shop.Open();
        return records.Owners.Found(typed).OrderBy(owner => owner.Name).Select(owner => owner.Name).ToList();
    }
}
