using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Find;

/// <summary>One box, everything a person may remember.</summary>
public sealed class FindTests(BusyShop shop) : IClassFixture<BusyShop>
{
    private async Task<Screen> Find(string typed, StaffRole role = StaffRole.Cutter)
    {
        using var desk = await shop.SignIn(role);
        return await desk.Open("/Find?q=" + Uri.EscapeDataString(typed));
    }

    private string Claim => shop.TicketOf(TicketKind.Claim, shop.Fresh).Code.Print();

    [Fact]
    public async Task An_empty_box_says_what_can_be_typed() =>
        (await Find("")).Expect("The code on a ticket", "The job number", "Any part of a name");

    [Fact]
    public async Task A_ticket_code_leads_to_its_job_however_it_is_typed()
    {
        foreach (var typed in new[] { Claim, Claim.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant(), $" {Claim.ToLowerInvariant()} " })
            Assert.Equal($"/Find/Job/{shop.Fresh}", (await Find(typed)).Path);
    }

    [Theory]
    [InlineData("https://desk.example/t/{0}")]
    [InlineData("http://desk.example/Find?q={0}&from=ticket")]
    [InlineData("https://desk.example/{0}/")]
    public async Task A_scanned_address_is_stripped_to_its_code(string address) =>
        Assert.Equal($"/Find/Job/{shop.Fresh}", (await Find(string.Format(System.Globalization.CultureInfo.InvariantCulture, address, Claim))).Path);

    [Fact]
    public async Task A_code_with_a_wrong_character_is_said_to_be_on_no_ticket()
    {
        var last = Claim[^1] == '7' ? '8' : '7';

        (await Find(Claim[..^1] + last)).Expect("No ticket has this code. Check the characters.");
    }

    [Fact]
    public async Task A_right_code_that_was_never_given_out_is_said_to_be_on_no_ticket()
    {
        var unused = Trade.Tickets.TicketCode.FromNumber(shop.TicketOf(TicketKind.Claim, shop.Fresh).Number);
        for (var i = 0; i < 1000; i++) unused = unused.Next();

        (await Find(unused.Print())).Expect("No ticket has this code. Check the characters.");
    }

    [Fact]
    public async Task A_replaced_ticket_says_so_and_names_the_new_one()
    {
        var old = shop.TicketOf(TicketKind.Claim, shop.Held);
        shop.Write((records, act) =>
        {
            var replacement = act.NewTicket(TicketKind.Claim, shop.Held);
            records.SaveChanges();
            records.Tickets.Single(ticket => ticket.Number == old.Number).Void(act.Now, replacement);
            return Outcome.Done();
        });

        (await Find(old.Code.Print())).Expect("was replaced", shop.TicketOf(TicketKind.Claim, shop.Held).Code.Print(), "Hugo Held");
    }

    [Fact]
    public async Task A_job_number_goes_straight_there()
    {
        var number = shop.NumberOf(shop.Cut);

        Assert.Equal($"/Find/Job/{shop.Cut}", (await Find($"{number}")).Path);
        Assert.Equal($"/Find/Job/{shop.Cut}", (await Find($"job #{number}")).Path);
    }

    [Theory]
    [InlineData("freya")]
    [InlineData("resh")]
    [InlineData("555-0103")]
    [InlineData("(608) 555 0103")]
    [InlineData("wi33344")]
    [InlineData("WI 333")]
    public async Task Any_part_of_name_phone_or_tag_finds_the_job(string typed) =>
        (await Find(typed)).Expect("Freya Fresh", "White-tail deer", "In the cooler", "Fri 27 Nov");

    [Fact]
    public async Task Several_are_listed_with_their_stage()
    {
        var page = await Find("608555");

        page.Expect("Hanna Hung", "Carl Cut", "Trim weighed", "Details missing");
        Assert.StartsWith("/Find?", page.Path, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lug_in_use_leads_to_the_job_whose_meat_is_in_it() =>
        (await Find($"lug {shop.Cut}")).Expect("Lug in use", "Carl Cut");

    [Fact]
    public async Task A_name_of_six_letters_is_not_taken_for_a_ticket()
    {
        shop.Write((records, _) =>
        {
            records.Owners.Add(new Owner("Walter", "608 555 0199"));
            return Outcome.Done();
        });

        var page = await Find("Walter");

        page.Expect("Owners with nothing here", "Walter");
        Assert.DoesNotContain("No ticket", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nobody of this name")]
    [InlineData("%")]
    [InlineData("\"'; --")]
    public async Task Nothing_found_says_so_and_what_to_try(string typed) => (await Find(typed)).Expect("Nothing found for", "What to try");
}
