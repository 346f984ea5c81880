using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>Holds the clients' ledgers against the shop's file, both ways.</summary>
internal static class LedgerCheck
{
    /// <summary>
    /// What was acknowledged is there once. What was not is there whole or not at all. Nothing else is there: every row added since
    /// the shop opened belongs to one form of the ledger, and to that form's one entry in the journal.
    /// </summary>
    /// <returns>How many forms of the ledger are saved.</returns>
    public static int Compare(Books opened, Books now, IEnumerable<SentForm> ledger)
    {
        var acts = now.Acts.Skip(opened.Acts.Count).ToList();
        var actOfRow = acts.SelectMany(act => act.Added, (act, row) => (act, row)).ToDictionary(one => one.row, one => one.act);
        var owned = new HashSet<string>();
        var saved = 0;
        foreach (var form in ledger)
        {
            if (!now.Results.TryGetValue(form.Key, out var result))
            {
                Assert.True(form.Answer is null, $"The shop said that form {form.Key} ({form.Verb}) is saved, and it is not there.");
                continue;
            }

            Assert.Equal(form.LeadsTo(result), form.Answer ?? form.LeadsTo(result));
            var rows = form.RowsIn(now, result).ToList();
            var act = actOfRow[rows[0]];
            Assert.Equal((form.By, form.Verb), (act.By, act.Verb));
            Assert.Equal(rows.Order(StringComparer.Ordinal), act.Added.Order(StringComparer.Ordinal));
            Assert.All(rows, row => Assert.True(owned.Add(row), $"{row} belongs to two forms."));
            saved++;
        }

        Assert.Equal(now.Rows.Except(opened.Rows).Order(StringComparer.Ordinal), owned.Order(StringComparer.Ordinal));
        Assert.Equal((saved, saved), (acts.Count, now.Results.Count - opened.Results.Count));
        return saved;
    }
}
